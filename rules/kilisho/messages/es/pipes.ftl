# of c4d16451, reviewed: false
pipes-steel_half_inch-name = Tubería de acero galvanizado de 1/2 pulgada
# of 265dd307, reviewed: false
pipes-steel_three_quarter_inch-name = Tubería de acero galvanizado de 3/4 de pulgada
# of 0ffe1bd5, reviewed: false
pipes-steel_one_inch-name = Tubería de acero galvanizado de 1 pulgada
# of 069d9cf8, reviewed: false
pipes-steel_one_and_a_quarter_inch-name = Tubería de acero galvanizado de 1 1/4 pulgadas
# of 1c9671a3, reviewed: false
pipes-steel_one_and_a_half_inch-name = Tubería de acero galvanizado de 1 1/2 pulgadas
# of 7c76b2a4, reviewed: false
pipes-steel_two_inch-name = Tubería de acero galvanizado de 2 pulgadas
# of 35b60576, reviewed: false
pipes-plastic_20-name = Tubería plástica de presión de 20 mm de diámetro exterior
# of 3afe4c6f, reviewed: false
pipes-plastic_25-name = Tubería plástica de presión de 25 mm de diámetro exterior
# of 6b7e5330, reviewed: false
pipes-plastic_32-name = Tubería plástica de presión de 32 mm de diámetro exterior
# of 7a7e7f0f, reviewed: false
pipes-plastic_40-name = Tubería plástica de presión de 40 mm de diámetro exterior
# of e17c87bd, reviewed: false
pipes-plastic_50-name = Tubería plástica de presión de 50 mm de diámetro exterior
