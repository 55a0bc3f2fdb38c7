### plant/actuator.rs

the-drain-motor-s-pulling-speed-2189577b = ड्रेन मोटर की खींचने की रफ़्तार
the-drain-motor-s-return-speed-51ea770a = ड्रेन मोटर की वापसी की रफ़्तार
the-drain-motor-s-stroke-9abb3f47 = ड्रेन मोटर का स्ट्रोक
the-clutch-lever-s-play-de88a86b = क्लच लीवर का प्ले
the-clutch-lever-in-its-link-0-596ef1f7 = क्लच लीवर अपने लिंक में (0 या 1)
the-clutch-lever-s-travel-at-da7176c0 = आराम में क्लच लीवर की चाल
the-travel-that-starts-to-e3d7d7de = वह चाल जिस पर ब्रेक छूटना शुरू होता है
the-travel-that-frees-the-brake-3dc8d5ee = वह चाल जिस पर ब्रेक पूरा छूटता है
the-brake-s-stopping-torque-5ff066f3 = ब्रेक का रोकने का टॉर्क
the-brake-s-holding-torque-bc4d11f8 = ब्रेक का थामे रखने का टॉर्क
the-travel-that-closes-the-cf388696 = वह चाल जिस पर क्लच जुड़ता है
the-clutch-spring-s-torque-ee6f63da = क्लच स्प्रिंग का टॉर्क
the-one-way-bearing-s-hold-8961acb7 = वन-वे बेयरिंग की पकड़

### plant/air_trap.rs

the-height-of-the-air-chamber-s-807f391c = एयर चैंबर के मुँह की ऊँचाई
the-air-chamber-s-area-9938c05d = एयर चैंबर का क्षेत्रफल
the-air-chamber-s-height-74d1fb8f = एयर चैंबर की अपनी ऊँचाई
the-air-hose-s-area-d9fa5b0c = एयर होज़ का क्षेत्रफल
the-air-hose-s-length-b49b8b4d = एयर होज़ की लंबाई
the-sensor-s-air-volume-ece835e2 = सेंसर में हवा का आयतन
the-air-hose-s-leak-6038fa56 = एयर होज़ का लीक
the-air-hose-s-lag-e15c12a3 = एयर होज़ की देरी
the-level-sensor-s-inductance-249d2a22 = लेवल सेंसर का इंडक्टेंस
the-level-sensor-s-capacitors-bdf2e9ff = लेवल सेंसर के कैपेसिटर
the-level-sensor-s-water-column-38bb89f1 = लेवल सेंसर का पानी का स्तंभ

### plant/drain.rs

the-drain-hose-s-bore-3951338d = ड्रेन होज़ का भीतरी व्यास
the-drain-path-s-loss-7147bd56 = ड्रेन के रास्ते का लॉस
the-loss-in-the-standpipe-d60ef325 = खड़े निकास पाइप में लॉस
the-height-of-the-drain-hose-s-5bc32165 = ड्रेन होज़ के सिरे की ऊँचाई
the-open-share-of-the-drain-path-eaeb2848 = ड्रेन के रास्ते का खुला हिस्सा
the-leak-past-the-closed-drain-4868e0d2 = बंद ड्रेन वाल्व से छूटता पानी
the-drain-valve-s-smallest-361ff82f = ड्रेन वाल्व का सबसे छोटा खुलना
the-stroke-that-starts-to-open-3b0468a2 = वह स्ट्रोक जिस पर ड्रेन वाल्व खुलना शुरू होता है
the-stroke-that-opens-the-drain-bcfef13b = वह स्ट्रोक जिस पर ड्रेन वाल्व पूरा खुलता है
the-drip-of-the-drain-joint-60161c01 = ड्रेन जोड़ का टपकना
the-drain-pump-fitted-0-or-1-3866dccd = ड्रेन पंप लगा है (0 या 1)
the-pump-s-shut-off-head-5f1d7330 = पंप का शट-ऑफ़ हेड
the-pump-s-inner-loss-ac64b75f = पंप का अंदरूनी लॉस
the-discharge-line-s-loss-1d033ab7 = पंप की निकास लाइन का लॉस
the-discharge-line-s-bore-de665352 = पंप की निकास लाइन का भीतरी व्यास
the-height-that-breaks-a-siphon-afd78740 = वह ऊँचाई जो साइफ़न तोड़ती है

### plant/drive.rs

the-rotor-s-inertia-24c5e530 = रोटर की इनर्शिया
the-motor-s-bearing-friction-2fe15fe9 = मोटर के बेयरिंग का घर्षण
the-motor-fan-s-drag-a7a3eba0 = मोटर के पंखे का अवरोध
the-friction-from-belt-pull-dabf4f9e = बेल्ट के खिंचाव से घर्षण
the-motor-pulley-s-diameter-6d5552af = मोटर की पुली का व्यास
the-mechanism-pulley-s-diameter-8463196b = मैकेनिज़्म की पुली का व्यास
the-pulleys-distance-111a421e = पुलियों के बीच की दूरी
the-belt-s-friction-b5615e6b = बेल्ट का घर्षण
the-groove-s-angle-afbba2ff = खाँचे का कोण
the-belt-s-tension-86ba71fd = बेल्ट का टेंशन
the-belt-s-mass-59ee0d81 = बेल्ट का द्रव्यमान
the-belt-s-efficiency-91bc54e8 = बेल्ट की एफ़िशिएंसी
the-grip-of-the-motor-pulley-s-6ec4e4ba = मोटर की पुली के स्क्रू की पकड़
the-large-pulley-s-inertia-43cc660c = बड़ी पुली की इनर्शिया
the-belt-s-cracks-7e7de386 = बेल्ट की दरारें
the-belt-guard-in-place-0-or-1-56b875c1 = बेल्ट गार्ड अपनी जगह (0 या 1)
the-water-on-the-belt-c994f208 = बेल्ट पर पानी
the-gear-s-ratio-e060d22e = गियर का अनुपात
the-gear-s-efficiency-58b8ab6a = गियर की एफ़िशिएंसी
the-gear-ring-s-teeth-3b8d1c2f = गियर रिंग के दाँते
the-gear-s-wear-d91da98c = गियर का घिसना
the-play-of-the-mechanism-s-0e911ce7 = मैकेनिज़्म के बोल्टों का प्ले
the-pulsator-s-inertia-40783046 = पल्सेटर की इनर्शिया
the-pulsator-spline-s-torque-ed6a3ecd = पल्सेटर की स्प्लाइन का टॉर्क
the-pulsator-s-water-drag-48f25a43 = पल्सेटर पर पानी का अवरोध
the-level-that-covers-the-2a26b780 = वह लेवल जो पल्सेटर को ढक देता है
the-scraping-under-the-pulsator-cb9ef8dc = पल्सेटर के नीचे की रगड़
the-pulsator-s-play-f0df96ca = पल्सेटर का प्ले
the-basket-s-radius-025ae11e = बास्केट की त्रिज्या
the-basket-s-inertia-925d3386 = बास्केट की इनर्शिया
the-basket-bearing-s-friction-55c21d3c = बास्केट के बेयरिंग का घर्षण
the-basket-s-windage-b5576199 = बास्केट पर हवा का अवरोध
the-basket-s-water-drag-8e912e03 = बास्केट पर पानी का अवरोध
the-basket-s-foam-drag-874b233d = बास्केट पर झाग का अवरोध
the-swirl-s-drag-f4678bd5 = घूमते पानी का अवरोध
the-swirling-share-of-the-bath-abb7ae69 = टब के पानी का घूमता हिस्सा
the-scraping-at-the-basket-d4991b27 = बास्केट पर रगड़
the-unbalance-of-loose-basket-e27fe8fe = बास्केट के ढीले बोल्टों का असंतुलन

### plant/drying.rs

the-load-s-moisture-after-long-0d0deb5a = लंबी स्पिन के बाद कपड़ों की नमी
the-reference-acceleration-e68dc7c7 = संदर्भ त्वरण
the-extraction-s-exponent-ad430a26 = निचोड़ का घातांक
the-extraction-s-time-49c460c4 = निचोड़ का समय

### plant/foam.rs

the-foam-after-detergent-ebbc671f = डिटर्जेंट के बाद झाग
the-foam-s-rise-time-2607e43d = झाग चढ़ने का समय
the-foam-s-fall-time-e1d1d3fd = झाग बैठने का समय

### plant/heat.rs

a-winding-s-heat-capacity-bbe82eaa = एक वाइंडिंग की ऊष्मा धारिता
the-path-from-winding-to-core-6b6e761f = वाइंडिंग से कोर तक का रास्ता
the-core-s-heat-capacity-51f58db3 = कोर की ऊष्मा धारिता
the-standing-motor-s-cooling-f479643c = खड़ी मोटर का ठंडा होना
the-fan-s-cooling-e05546b0 = पंखे से ठंडक
the-protector-s-lag-11e4cd24 = प्रोटेक्टर की देरी
the-protector-s-trip-temperature-21f44875 = प्रोटेक्टर के खुलने का तापमान
the-protector-s-reset-4c3c8409 = प्रोटेक्टर के वापस जुड़ने का तापमान
copper-s-temperature-coefficient-c25d0711 = कॉपर का तापमान गुणांक

### plant/inlet.rs

the-supply-pressure-8736a6b2 = सप्लाई का प्रेशर
the-inlet-valve-s-passage-98b58b08 = इनलेट वाल्व का रास्ता
the-strainer-s-passage-d50bd1fc = जाली का रास्ता
the-supply-hose-s-passage-ef3ed4d2 = सप्लाई होज़ का रास्ता
the-blocked-share-of-the-inlet-a7e22e0b = इनलेट फ़िल्टर का बंद हिस्सा
the-closed-share-of-the-tap-b18074c6 = नल का बंद हिस्सा
the-squeezed-share-of-the-supply-d8c5f00b = सप्लाई होज़ का दबा हिस्सा
the-flow-regulator-s-set-point-ed94fff3 = फ़्लो रेगुलेटर का सेट पॉइंट
the-regulator-s-sharpness-e488db9e = रेगुलेटर का तीखापन
the-pilot-s-lowest-pressure-0f26785d = पायलट का सबसे कम प्रेशर
the-valve-s-opening-time-8fb64b59 = वाल्व खुलने का समय
the-valve-s-closing-time-f7ae9434 = वाल्व बंद होने का समय
the-leak-past-the-closed-inlet-4ce67804 = बंद इनलेट वाल्व से छूटता पानी
the-drip-of-the-supply-joint-b8769512 = सप्लाई जोड़ का टपकना
the-supply-water-s-temperature-64ad7b3c = सप्लाई के पानी का तापमान
the-length-of-the-supply-pipe-ad8d600f = सप्लाई पाइप की लंबाई
the-bore-of-the-supply-pipe-acae3d05 = सप्लाई पाइप का भीतरी व्यास
the-wave-speed-in-the-supply-410547df = सप्लाई पाइप में तरंग की रफ़्तार

### plant/load.rs

the-dry-load-c3124ecf = सूखे कपड़ों का लोड
the-load-s-saturated-uptake-2c6bda05 = लोड पूरा भीगने पर सोखा पानी
the-load-s-uptake-after-dripping-65585319 = टपकने के बाद लोड में सोखा पानी
the-load-s-wetting-time-a97e58f3 = लोड के भीगने का समय
the-fibre-s-density-1b0007da = रेशे का घनत्व
the-water-that-covers-the-load-029b9715 = लोड को ढकने वाला पानी
the-load-s-drag-on-the-pulsator-b511fac8 = पल्सेटर पर लोड का अवरोध
the-reference-liquor-ratio-f4f7af80 = पानी और लोड का संदर्भ अनुपात
the-textile-s-slip-speed-914df588 = कपड़ों के फिसलने की रफ़्तार
the-textile-s-share-on-the-2a7868d8 = बास्केट की दीवार पर कपड़ों का हिस्सा
the-load-s-radius-of-gyration-c0b65018 = लोड का रेडियस ऑफ़ जाइरेशन
the-unbalanced-mass-76db678d = असंतुलित द्रव्यमान
the-radius-of-the-unbalanced-eac0fb95 = असंतुलित द्रव्यमान की त्रिज्या
the-height-of-the-unbalanced-c01365ae = असंतुलित द्रव्यमान की ऊँचाई
the-unbalance-left-after-9d74eb81 = फैलाने के बाद बचा असंतुलन
the-washing-motion-that-tangles-984ba1a4 = धुलाई की वह हलचल जो फैले लोड को फिर उलझा देती है

### plant/pressure_switch.rs

the-low-level-s-set-pressure-b560c2e5 = कम लेवल का सेट प्रेशर
the-medium-level-s-set-pressure-b81cb182 = मध्यम लेवल का सेट प्रेशर
the-high-level-s-set-pressure-01d862d3 = ऊँचे लेवल का सेट प्रेशर
the-level-switch-s-reset-df9bde4a = लेवल स्विच का वापसी प्रेशर
the-level-switch-stuck-on-full-0-7d498ee1 = लेवल स्विच भरा पर अटका (0 या 1)
the-level-switch-stuck-on-empty-3f432d37 = लेवल स्विच ख़ाली पर अटका (0 या 1)

### plant/site.rs

the-room-s-temperature-fb4fe66f = कमरे का तापमान
the-air-pressure-a922953b = हवा का दबाव
the-slope-of-the-floor-0d98280d = फ़र्श की ढलान
the-grip-of-the-feet-ec162772 = पायों की पकड़
the-firmness-of-the-feet-6f9c4b7d = पायों की मज़बूती

### plant/suspension.rs

the-suspended-mass-96c3e6d7 = लटका हुआ द्रव्यमान
the-rods-length-04b1dc99 = रॉड की लंबाई
the-rods-springs-0e75f841 = रॉड के स्प्रिंग
the-radius-of-the-rods-circle-7f6acd2d = रॉड के घेरे की त्रिज्या
the-tub-s-transverse-inertia-577b8d6a = टब की आड़ी इनर्शिया
the-dampers-strength-b98a83c4 = डैंपर का ज़ोर
the-rod-ends-friction-90c50a24 = रॉड के सिरों का घर्षण
the-dampers-friction-46367847 = डैंपर का घर्षण
the-rim-s-height-62a94d39 = टब के किनारे की ऊँचाई
the-lever-s-gap-e1ed4ce2 = लीवर की दूरी
the-cabinet-s-clearance-425dec24 = कैबिनेट से टब की दूरी
the-tub-s-lean-4cf86877 = टब का झुकाव
the-transport-pieces-left-in-0-21cfcd7d = लगी छोड़ी गई ट्रांसपोर्ट की रोक (0 से 1)
a-loose-piece-or-panel-0-to-1-4d4df650 = कोई ढीला टुकड़ा या पैनल (0 से 1)
the-cabinet-s-mass-81332782 = कैबिनेट का द्रव्यमान
the-balance-ring-s-radius-f73a2d42 = बैलेंस रिंग की त्रिज्या
the-balance-ring-s-height-c712c33f = बैलेंस रिंग की ऊँचाई
the-balance-ring-s-liquid-e34308e4 = बैलेंस रिंग का द्रव
the-balance-ring-s-eccentricity-fe30f100 = बैलेंस रिंग के द्रव का केंद्र से हटाव
the-balance-ring-s-fill-a0562345 = बैलेंस रिंग का भराव
the-unbalance-of-a-ring-emptied-35af53e5 = एक तरफ़ से ख़ाली हुई रिंग का असंतुलन

### plant/tub.rs

the-tub-s-lower-area-15620921 = टब का निचला क्षेत्रफल
the-tub-s-upper-area-9032a0aa = टब का ऊपरी क्षेत्रफल
the-height-of-the-tub-s-step-c249a960 = टब की सीढ़ी की ऊँचाई
the-overflow-edge-f655ea4f = ओवरफ़्लो का किनारा
the-overflow-s-width-f880dae8 = ओवरफ़्लो की चौड़ाई
the-overflow-s-limit-021716bf = ओवरफ़्लो की सीमा
the-overflow-s-share-on-the-2164a771 = ओवरफ़्लो का फ़र्श पर जाने वाला हिस्सा
the-water-s-density-24e9d649 = पानी का घनत्व
the-leak-of-the-shaft-seal-c538f5b0 = शाफ़्ट सील का लीक
the-tub-s-heat-loss-293b8044 = टब से गरमी का जाना
