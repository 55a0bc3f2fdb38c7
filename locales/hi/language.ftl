language-name = हिन्दी
language-numbers = hi-IN-u-nu-latn
# While the page opens, before the program runs.
starting-lead = एक वॉशिंग मशीन जिसे खोलना, नापना और ठीक करना है, एक-एक ख़राबी करके। मीटर जो दिखाता है वह सब गणना से आता है, जैसा असली मशीन में होता।
starting-opening = वर्कशॉप खुल रही है …
