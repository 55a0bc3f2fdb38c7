### assess/assessment_file.rs

diagnosis-76b861fe = निदान
economy-b945e5f7 = किफ़ायत
procedure-a6e741ce = कार्यविधि
evidence-c21f2024 = सबूत
this-version-reads-format-8dd9c5e1 = यह संस्करण { $format } पढ़ता है
eight-letters-as-the-page-makes-a3dfba87 = आठ अक्षर, जैसे पेज उन्हें मूल्यांकन की कुंजी से बनाता है, मसलन "K7QF-2M9D"; जहाँ कमरे में विराम नहीं हैं, वहाँ इसे छोड़ दें
ask-for-1-to-most-jobs-in-all-9829d344 = कुल 1 से { $most } जॉब माँगें
name-a-job-of-the-library-517e39ef = संग्रह के किसी जॉब का नाम दें
the-library-has-n-such-jobs-ask-6cd2031c = संग्रह में ऐसे { $n } जॉब हैं: कम माँगें या शर्त चौड़ी करें
name-a-fault-of-the-catalogue-d8bfa9e0 = सूची की किसी ख़राबी का नाम दें
equal-faults-lie-within-most-9df49a3f = बराबर ख़राबियाँ पहली से, जो { $first } पर है, { $most } लॉजिट के भीतर होती हैं
name-one-of-parts-79f24ad7 = इनमें से एक का नाम दें: { $parts }
ask-five-judges-or-more-900d106c = पाँच या ज़्यादा जजों से पूछें
one-number-for-each-of-the-n-c0c587da = { $n } जॉब में से हर एक के लिए एक संख्या

### assess/calendar.rs

refresher-skills-813e66a3 = दोहराई: { $skills }
refresher-due-f609c0a9 = दोहराई का समय

### assess/decide.rs

a-critical-safety-rule-was-4cb8d976 = { $n } जॉब में जानलेवा दर्जे का सुरक्षा नियम टूटा
share-of-the-jobs-were-put-right-8839ddfb = { $share } % जॉब में मशीन ठीक की गई, { $least } % माँगे जाते हैं
part-share-of-its-points-least-4038e672 = { $part }: उसके अंकों का { $share } %, { $least } % माँगा जाता है
marks-marks-are-within-border-of-9a60a0f8 = { $marks } अंक { $cut } के { $border } के भीतर हैं: और जॉब फ़ैसला करते हैं
marks-marks-cut-are-asked-3feebe2b = { $marks } अंक, { $cut } माँगे जाते हैं

### assess/retention.rs

one-month-8c1d208d = एक महीना
n-months-53904ff6 = { $n } महीने
