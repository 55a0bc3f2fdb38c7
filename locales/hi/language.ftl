language-name = हिन्दी
language-numbers = hi-IN-u-nu-latn
