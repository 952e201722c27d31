# of c4d16451, reviewed: false
pipes-steel_half_inch-name = Tuyau en acier galvanisé 1/2 pouce
# of 265dd307, reviewed: false
pipes-steel_three_quarter_inch-name = Tuyau en acier galvanisé 3/4 pouce
# of 0ffe1bd5, reviewed: false
pipes-steel_one_inch-name = Tuyau en acier galvanisé 1 pouce
# of 069d9cf8, reviewed: false
pipes-steel_one_and_a_quarter_inch-name = Tuyau en acier galvanisé 1 1/4 pouce
# of 1c9671a3, reviewed: false
pipes-steel_one_and_a_half_inch-name = Tuyau en acier galvanisé 1 1/2 pouce
# of 7c76b2a4, reviewed: false
pipes-steel_two_inch-name = Tuyau en acier galvanisé 2 pouces
# of 35b60576, reviewed: false
pipes-plastic_20-name = Tuyau plastique pression, 20 mm extérieur
# of 3afe4c6f, reviewed: false
pipes-plastic_25-name = Tuyau plastique pression, 25 mm extérieur
# of 6b7e5330, reviewed: false
pipes-plastic_32-name = Tuyau plastique pression, 32 mm extérieur
# of 7a7e7f0f, reviewed: false
pipes-plastic_40-name = Tuyau plastique pression, 40 mm extérieur
# of e17c87bd, reviewed: false
pipes-plastic_50-name = Tuyau plastique pression, 50 mm extérieur
