### expert/apart.rs

let-a-whole-program-run-and-339e7891 = let a whole program run, and watch and listen
press-the-service-key-and-look-8df43d5f = press the service key and look at the display

### expert/hint.rs

next-act-c76dfea6 = Next: { $act }.
your-notes-fit-one-cause-far-9355763b = Your notes fit one cause far better than all others.
your-notes-still-fit-n-causes-fbdf2070 = Your notes still fit { $n } causes.
what-have-you-seen-it-do-1761f9f4 = What have you seen it do yourself, and what do you know from the customer only?
what-could-eyes-alone-tell-now-8be53e1e = What could eyes alone tell now, before anything is measured?
what-should-move-freely-or-hold-f68a3522 = What should move freely, or hold, and have your hands tried it?
which-of-them-would-a-meter-tell-173e09ce = Which of them would a meter tell apart, and where?
is-there-anything-left-that-you-929b6f08 = Is there anything left that you must know before you repair?
what-in-your-notes-says-that-760ac3a5 = What in your notes says that anything is still wrong?
which-of-your-lines-do-not-go-698b98bb = Which of your lines do not go together, and which would you take again?
as-the-customer-uses-it-covers-9acf9010 = As the customer uses it: covers on, plug in, from outside.
in-your-notebook-line-by-line-1dc54bd5 = In your notebook, line by line.
from-outside-nothing-has-to-come-f5a8b2bb = From outside: nothing has to come off.
unplugged-and-proved-dead-with-ed275c43 = Unplugged and proved dead, with these off: { $covers }.
nothing-527dae8a = nothing
it-would-look-the-same-for-the-64a08952 = It would look the same for the likeliest causes, and rules out others.
one-or-next-8c9f873a = { $one }; or { $next }
shown-would-fit-causes-12976983 = “{ $shown }” would fit: { $causes }.
by-your-notes-this-is-sure-9f5fca04 = By your notes this is { $sure } % likely: { $what }. Looking further would cost more than it could save.
by-your-notes-it-is-right-as-it-68be5fda = By your notes it is right as it stands: prove it with a whole run and the tests.
no-usual-cause-explains-all-your-7e1fdfe8 = No usual cause explains all your notes. One of them may be wrong.
nothing-is-wrong-34c2c40b = nothing is wrong

### expert/next_words.rs

look-further-3117d574 = look further
call-for-help-5f8221ed = call for help
let-it-drain-and-spin-and-watch-705cbcfe = let it drain and spin, and watch
let-it-fill-and-wash-and-watch-c101d186 = let it fill and wash, and watch
let-it-wash-drain-and-spin-and-ad766cdb = let it wash, drain and spin, and watch
move-it-by-hand-place-bb946900 = move it by hand: { $place }
