# of ec99ce0d, reviewed: false
mix-limit-least-total-solids = Matière sèche du mélange, au moins
# of 012e5282, reviewed: false
mix-limit-largest-total-solids = Matière sèche du mélange, au plus
# of 72f5f319, reviewed: false
mix-limit-least-ratio = Rapport carbone sur azote, au moins
# of cc4aa4cb, reviewed: false
mix-limit-largest-ratio = Rapport carbone sur azote, au plus
# of 2084a14c, reviewed: false
mix-limit-ammonia = Azote ammoniacal dans le mélange, au plus
# of c1bc84ea, reviewed: false
mix-limit-loading = Charge organique, au plus
# of 2adce40d, reviewed: false
mix-limit-retention = Temps de rétention hydraulique, au moins
# of ad889135, reviewed: false
mix-limit-crop-residues = Part de résidus de culture, au plus
# of a4faf18f, reviewed: false
mix-limit-water = Eau, au plus
# of 022e469c, reviewed: false
mix-limit-available = { $of }, au plus ce qu'il y a
# of f7372cd8, reviewed: false
mix-limit-share = Part de { $of }, au plus
# of b1236849, reviewed: false
mix-limit-gas-demand = Biogaz, au moins
# of a0aaf5f4, reviewed: false
mix-holds-least-total-solids = Le mélange est aussi clair qu'il est permis ({ $bound }). Un pas de plus serait un mélange plus clair de { $step }.
# of e371fa9c, reviewed: false
mix-holds-largest-total-solids = Le mélange est aussi épais qu'il est permis ({ $bound }). Un pas de plus serait un mélange plus épais de { $step }.
# of 29a1dc9a, reviewed: false
mix-holds-least-ratio = L'alimentation est aussi riche en azote qu'il est permis ({ $bound }). Un pas de plus serait un rapport carbone sur azote plus bas de { $step }.
# of 9e5ee478, reviewed: false
mix-holds-largest-ratio = L'alimentation est aussi pauvre en azote qu'il est permis ({ $bound }). Un pas de plus serait un rapport carbone sur azote plus haut de { $step }.
# of 648d34f8, reviewed: false
mix-holds-ammonia = L'ammoniac est à sa limite ({ $bound }). Un pas de plus serait plus d'ammoniac, de { $step }.
# of f981c50f, reviewed: false
mix-holds-loading = Le digesteur reçoit autant de matière organique qu'il en supporte ({ $bound }). Un pas de plus serait une charge plus forte de { $step }.
# of 006ed27f, reviewed: false
mix-holds-retention = Le mélange reste aussi peu de temps qu'il est permis ({ $bound }). Un pas de plus serait un séjour plus court de { $step }.
# of 6d0e2c5e, reviewed: false
mix-holds-crop-residues = Les résidus de culture, qui flottent, sont à leur limite ({ $bound }). Un pas de plus serait plus de résidus de culture, de { $step }.
# of 7e11d20f, reviewed: false
mix-holds-water = Toute l'eau est utilisée ({ $bound }). Un pas de plus serait { $step } d'eau en plus.
# of 9fc2c3f8, reviewed: false
mix-holds-available = Tout ce qu'il y a de { $of } est utilisé ({ $bound }). Un pas de plus serait { $step } en plus.
# of 631a211b, reviewed: false
mix-holds-share = { $of } est à sa plus grande part de la matière volatile ({ $bound }). Un pas de plus serait une part plus grande de { $step }.
# of b9854233, reviewed: false
mix-holds-gas-demand = Le gaz demandé décide ({ $bound }). Un pas de plus serait de demander { $step } de gaz en moins.
# of cb474b6e, reviewed: false
mix-step-brings-gas = Cela apporterait { $gas } de biogaz.
# of ffdd5a42, reviewed: false
mix-step-saves = Cela économiserait { $cost } par jour dans la monnaie des prix.
# of ff1c830d, reviewed: false
mix-step-eases = Cela abaisserait de { $share } (en points) le plus fort emploi de ce qu'il y a.
# of 9ecd5073, reviewed: false
mix-step-nothing = À lui seul, cela n'apporterait rien.
# of 60ed7e9c, reviewed: false
mix-none = Aucun mélange de ce qu'il y a ne respecte toutes les limites. Une limite relâchée coûte en sûreté de fonctionnement : lisez les constats d'une recette que vous demandez avec elle. Aucune limite de fonctionnement n'est proposée plus de quatre fois plus large ; là où cela ne suffit pas, il faut d'autres substrats.
# of 54cc0966, reviewed: false
mix-allow-least-total-solids = Permettez un mélange plus clair : { $after } au lieu de { $before }.
# of bb94a2c7, reviewed: false
mix-allow-largest-total-solids = Permettez un mélange plus épais : { $after } au lieu de { $before }.
# of 2b07d548, reviewed: false
mix-allow-least-ratio = Permettez un rapport carbone sur azote plus bas : { $after } au lieu de { $before }.
# of cb6ca7c8, reviewed: false
mix-allow-largest-ratio = Permettez un rapport carbone sur azote plus haut : { $after } au lieu de { $before }.
# of 57545278, reviewed: false
mix-allow-ammonia = Permettez plus d'ammoniac : { $after } au lieu de { $before }.
# of b48ada11, reviewed: false
mix-allow-loading = Permettez une charge plus forte : { $after } au lieu de { $before }.
# of 52cd0822, reviewed: false
mix-allow-retention = Permettez un séjour plus court : { $after } au lieu de { $before }.
# of 7fecc8d3, reviewed: false
mix-allow-crop-residues = Permettez plus de résidus de culture : { $after } au lieu de { $before }.
# of d1173418, reviewed: false
mix-allow-water = Permettez plus d'eau : { $after } au lieu de { $before }.
# of 9b8d68a2, reviewed: false
mix-allow-available = Permettez plus de { $of } : { $after } au lieu de { $before }.
# of f04285d9, reviewed: false
mix-allow-share = Permettez une plus grande part de { $of } : { $after } au lieu de { $before }.
# of 3890f6e8, reviewed: false
mix-allow-gas-demand = Permettez de demander moins de gaz : { $after } au lieu de { $before }.
# of 565583d9, reviewed: false
mix-proved = Aucun mélange dans les limites n'est meilleur de plus que cette part, selon le modèle et les chiffres typiques.
# of ef80a418, reviewed: false
mix-price-unknown = Aucun prix n'a été indiqué.
