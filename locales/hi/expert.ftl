### expert/apart.rs


### expert/hint.rs

nothing-527dae8a = कुछ नहीं

### expert/next_words.rs

