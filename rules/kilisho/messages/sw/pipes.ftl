# of c4d16451, reviewed: false
pipes-steel_half_inch-name = Bomba la chuma lililopakwa zinki inchi 1/2
# of 265dd307, reviewed: false
pipes-steel_three_quarter_inch-name = Bomba la chuma lililopakwa zinki inchi 3/4
# of 0ffe1bd5, reviewed: false
pipes-steel_one_inch-name = Bomba la chuma lililopakwa zinki inchi 1
# of 069d9cf8, reviewed: false
pipes-steel_one_and_a_quarter_inch-name = Bomba la chuma lililopakwa zinki inchi 1 1/4
# of 1c9671a3, reviewed: false
pipes-steel_one_and_a_half_inch-name = Bomba la chuma lililopakwa zinki inchi 1 1/2
# of 7c76b2a4, reviewed: false
pipes-steel_two_inch-name = Bomba la chuma lililopakwa zinki inchi 2
# of 35b60576, reviewed: false
pipes-plastic_20-name = Bomba la plastiki la presha, kipenyo cha nje 20 mm
# of 3afe4c6f, reviewed: false
pipes-plastic_25-name = Bomba la plastiki la presha, kipenyo cha nje 25 mm
# of 6b7e5330, reviewed: false
pipes-plastic_32-name = Bomba la plastiki la presha, kipenyo cha nje 32 mm
# of 7a7e7f0f, reviewed: false
pipes-plastic_40-name = Bomba la plastiki la presha, kipenyo cha nje 40 mm
# of e17c87bd, reviewed: false
pipes-plastic_50-name = Bomba la plastiki la presha, kipenyo cha nje 50 mm
