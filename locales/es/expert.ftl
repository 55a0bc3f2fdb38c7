### expert/apart.rs


### expert/hint.rs

nothing-527dae8a = nada

### expert/next_words.rs

