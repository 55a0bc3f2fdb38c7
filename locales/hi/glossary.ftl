# Hindi glossary of Tubwright. English trade words in Devanagari; nukta kept (फ़, ज़). Digits and units as symbols.
# --- parts
top-loading-washing-machine = टॉप-लोड वॉशिंग मशीन
tub = टब
outer-tub = बाहरी टब
basket = बास्केट
# customers say ड्रम where English customers say drum
drum = ड्रम
pulsator = पल्सेटर
balance-ring = बैलेंस रिंग
tub-cover = टब कवर
top-cover = ऊपरी कवर
back-cover = पिछला कवर
control-panel = कंट्रोल पैनल
cabinet = कैबिनेट
bottom-guard = निचला गार्ड
# lid is ढक्कन, cover is कवर: never the other way round
lid = ढक्कन
lid-switch = ढक्कन स्विच
out-of-balance-switch = अनबैलेंस स्विच
# the lever that works it (unbalance lever, out-of-balance lever)
out-of-balance-lever = अनबैलेंस लीवर
level-sensor = लेवल सेंसर
pressure-switch = प्रेशर स्विच
level-selector = लेवल सिलेक्टर
air-hose = एयर होज़
air-chamber = एयर चैंबर
# hose is होज़, house pipe is पाइप; customers may say पाइप for both
supply-hose = सप्लाई होज़
drain-hose = ड्रेन होज़
standpipe = खड़ा निकास पाइप
inlet-valve = इनलेट वाल्व
inlet-filter = इनलेट फ़िल्टर
cold-valve = ठंडे पानी का वाल्व
hot-valve = गरम पानी का वाल्व
plunger = प्लंजर
drain-valve = ड्रेन वाल्व
bellows = बेलो
drain-motor = ड्रेन मोटर
drain-pump = ड्रेन पंप
clutch-motor = क्लच मोटर
drain-actuator = ड्रेन एक्चुएटर
mode-actuator = मोड एक्चुएटर
# the steel wire that drain motor or clutch motor pulls; तार is only an electric wire
wire-pulled-by-the-drain-motor = केबल
wash-motor = वॉश मोटर
protector = प्रोटेक्टर
run-capacitor = रन कैपेसिटर
belt = बेल्ट
pulley = पुली
gearbox = गियरबॉक्स
one-way-bearing = वन-वे बेयरिंग
clutch = क्लच
clutch-lever = क्लच लीवर
link = लिंक
brake-band = ब्रेक बैंड
shaft-seal = शाफ़्ट सील
spline = स्प्लाइन
suspension-rod = सस्पेंशन रॉड
cup-of-a-rod = कप
foot = पाया
feet = पाये
lock-nut = लॉक नट
washer = वॉशर
lint = रोएँ
lint-filter = लिंट फ़िल्टर
drain-joint = ड्रेन जोड़
transport-pieces = ट्रांसपोर्ट की रोक
# --- electrical
# a technician's फ़ेज़; 'hot' of the American N machine is फ़ेज़ too; the letters L and N stay
line = फ़ेज़
hot-conductor = फ़ेज़
neutral = न्यूट्रल
# earth, ground, protective conductor, PE alike
earth = अर्थ
earth-wire = अर्थ का तार
earth-bond = अर्थ बॉन्ड
mains = मेन्स
mains-cord = मेन्स कॉर्ड
mains-filter = मेन्स फ़िल्टर
socket = सॉकेट
plug = प्लग
board-plug = बोर्ड प्लग
board = बोर्ड
control-board = कंट्रोल बोर्ड
terminal-block = टर्मिनल ब्लॉक
terminal = टर्मिनल
tab = टैब
push-on-terminal = पुश-ऑन टर्मिनल
wire = तार
motor-lead = मोटर की लीड
wire-end = तार का सिरा
feed = फ़ीड
return = रिटर्न
wiring-harness = वायरिंग हार्नेस
strain-relief = स्ट्रेन रिलीफ़
fuse = फ़्यूज़
thermal-fuse = थर्मल फ़्यूज़
# household breaker of either kind: not MCB, not RCCB, the word must not tell which
breaker = ब्रेकर
transformer = ट्रांसफ़ॉर्मर
winding = वाइंडिंग
coil = कॉइल
relay = रिले
triac = ट्रायक
snubber = स्नबर
varistor = वैरिस्टर
bleed-resistor = ब्लीड रेज़िस्टर
suppression-capacitor = सप्रेशन कैपेसिटर
timer = टाइमर
dial = डायल
key-of-the-panel = बटन
key-lock = बटन लॉक
buzzer = बज़र
low-voltage-side = लो-वोल्टेज साइड
output = आउटपुट
input = इनपुट
voltage = वोल्टेज
resistance = रेज़िस्टेंस
capacitance = कैपेसिटेंस
leakage-current = लीकेज करंट
touch-current = टच करंट
insulation = इंसुलेशन
# --- faults
fault = ख़राबी
# of a circuit; a valve, tap or lid is खुला
open-circuit = ओपन
shorted = शॉर्ट
turns-shorted = टर्न शॉर्ट
burnt = जला हुआ
welded = चिपका हुआ (कॉन्टैक्ट)
blown-fuse = उड़ा हुआ फ़्यूज़
dead-output = डेड आउटपुट
chafed = घिसा हुआ (तार का इंसुलेशन)
corroded = ज़ंग/काट लगा हुआ
damp = नमी
seized = सीज़
jammed = फँसा हुआ, जाम
stuck = अटका हुआ
stripped-gears = घिसे-टूटे गियर
glazed = चिकना पड़ा हुआ
kinked = मुड़ा हुआ
pinched = दबा हुआ
# water: weep रिसना, drip टपकना, leak लीक; a valve that lets water by when shut: बंद रहते पानी छोड़ता है
weeps = रिसता है
leaks-by = बंद रहते पानी छोड़ता है
# electrical leak, never लीक alone
electrical-leak = लीकेज
ghost-volts = घोस्ट वोल्टेज
# play of a lever or shaft
play = प्ले
stroke = स्ट्रोक
# --- acts and instruments
fill = भराई
wash = धुलाई
rinse = खंगालना
drain = ड्रेन
spin = स्पिन
program = प्रोग्राम
service-test = सर्विस टेस्ट
measure = नापना
reading = रीडिंग
data-sheet = डेटा शीट
replace = बदलना
mend = मरम्मत करना
refit = दोबारा लगाना
crimp = क्रिम्प करना
thread-lock = थ्रेड लॉक
multimeter = मल्टीमीटर
low-impedance-mode = लो-इम्पीडेंस मोड
clamp-meter = क्लैंप मीटर
probe = प्रोब
insulation-tester = इंसुलेशन टेस्टर
belt-tension-gauge = बेल्ट टेंशन गेज
spirit-level = स्पिरिट लेवल
jug-and-watch = जग और घड़ी
# --- safety
unplug = प्लग निकालना
isolate = सप्लाई से अलग करना
# measured proof that no voltage is there
prove-dead = डेड साबित करना
live = चालू सप्लाई पर
lead-off-the-charge = चार्ज उतारना
shock = करंट का झटका
# --- work and assessment
job = जॉब
bench = बेंच
customer = ग्राहक
complaint = शिकायत
apprentice = अप्रेंटिस
assessment = मूल्यांकन
candidate = परीक्षार्थी
marks = अंक
score-sheet = अंक-पत्र
# what a look or reading showed; not निष्कर्ष (conclusion)
finding = पाई गई बात
evidence = सबूत
cause = कारण
likely-causes = संभावित कारण
# how likely each cause is held to be, as a number
belief = विश्वास-मान
severity = गंभीरता
target-cost = लक्ष्य लागत
avoidable-cost = टाली जा सकने वाली लागत
economy = किफ़ायत
chance = संयोग
hint = संकेत
debrief = समीक्षा
notes = नोट्स
estimate = अनुमानित ख़र्च
# socket spanner (tool), not the wall socket
socket-tool = गोटी पाना
spanner = पाना
# --- words the display shows (jobs and handbook quote them; the program's own texts should match)
fills-too-slowly = पानी बहुत धीरे भर रहा है
drains-too-slowly = पानी बहुत धीरे निकल रहा है
basket-keeps-swinging = बास्केट बार-बार झूल रही है
lid-is-open = ढक्कन खुला है
close-the-lid = ढक्कन बंद करें
water-level-reading-not-plausible = पानी के लेवल की रीडिंग मानने लायक नहीं
overflow-danger = पानी छलकने का ख़तरा
water-keeps-leaving = पानी निकलता जा रहा है
supply-voltage-out-of-range = सप्लाई वोल्टेज सीमा से बाहर
spreading-the-load = कपड़े फैलाए जा रहे हैं
power-was-off = बिजली चली गई थी
display-filling = पानी भर रहा है
display-ready = तैयार
# --- sounds
hum = भनभनाहट
whirr = घर्र-घर्र
whine = सूँ-सूँ
growl = गुर्राहट
rumble = गड़गड़ाहट
grinding = किरकिराहट
squeal = चीख़
squeak = चूँ-चूँ
hiss = सीं-सीं
click = क्लिक
rattle = खड़खड़
knock = ठक
# faults.ftl keeps these; hum and buzz of a coil alike
buzz = भनभनाहट
roar = दहाड़
belt-slap = फट-फट
bang = धम-धम
smell = गंध
# gender: होज़, पंप, वाल्व, टब, पाया, बैंड masculine; मोटर, बेल्ट, बास्केट, पुली, रॉड, केबल, कॉर्ड, मशीन feminine; customers whose sex is not known speak without a gendered first person
hose-gender = होज़ (पुल्लिंग)
drift = ड्रिफ़्ट
# --- names of buttons and pages as the handbook quotes them (the program's own texts should match)
button-work-it-yourself = ख़ुद करके देखें
button-print-job-card-and-pictures = जॉब कार्ड और चित्र प्रिंट करें
button-print-the-chart = चार्ट प्रिंट करें
button-back-to-the-course = कोर्स पर वापस
button-send-now = अभी भेजें
button-watch-one = एक को देखें
button-share = साझा करें
button-erase = मिटाएँ
button-read = पढ़ें
page-results = परिणाम
page-settings = सेटिंग्स
page-papers = काग़ज़ात
page-readings-and-faults = रीडिंग और ख़राबियाँ
page-training-systems-and-stores = प्रशिक्षण सिस्टम और भंडार
page-for-many-people = बहुत लोगों के लिए
heading-not-accepted = स्वीकार नहीं
heading-pause-of-the-whole-room = पूरे कमरे का विराम
line-safe = सुरक्षित?
observer-s-sheet = निरीक्षण-पत्र
desk = डेस्क
training-set = प्रशिक्षण सेट
file-for-trainees = प्रशिक्षुओं वाली फ़ाइल
file-with-the-answer = जवाब वाली फ़ाइल
start-code = स्टार्ट कोड
word-for-today = आज का शब्द
invigilated-room = निरीक्षक वाला कमरा
seal = सील
ruling = निर्णय
# review of results by an instructor; debrief is समीक्षा
review = रिव्यू
near-the-cut = पास की सीमा के पास
diagnosis = निदान
procedure = कार्यविधि
common-practice = आम चलन
from-memory = याद से
dead-test = डेड टेस्ट
pinhole = बारीक छेद
u-tube = U-ट्यूब
splitter-lead = स्प्लिटर लीड
residual-current-device = रेज़िडुअल करंट डिवाइस
closed-contact = बंद (जुड़ा) कॉन्टैक्ट
