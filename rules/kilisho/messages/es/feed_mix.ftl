# of ec99ce0d, reviewed: false
mix-limit-least-total-solids = Sólidos totales de la mezcla, como mínimo
# of 012e5282, reviewed: false
mix-limit-largest-total-solids = Sólidos totales de la mezcla, como máximo
# of 72f5f319, reviewed: false
mix-limit-least-ratio = Relación carbono a nitrógeno, como mínimo
# of cc4aa4cb, reviewed: false
mix-limit-largest-ratio = Relación carbono a nitrógeno, como máximo
# of 2084a14c, reviewed: false
mix-limit-ammonia = Nitrógeno amoniacal en la mezcla, como máximo
# of c1bc84ea, reviewed: false
mix-limit-loading = Carga orgánica, como máximo
# of 2adce40d, reviewed: false
mix-limit-retention = Tiempo de retención hidráulica, como mínimo
# of ad889135, reviewed: false
mix-limit-crop-residues = Parte de residuos de cosecha, como máximo
# of a4faf18f, reviewed: false
mix-limit-water = Agua, como máximo
# of 022e469c, reviewed: false
mix-limit-available = { $of }, a lo sumo lo que hay
# of f7372cd8, reviewed: false
mix-limit-share = Parte de { $of }, como máximo
# of b1236849, reviewed: false
mix-limit-gas-demand = Biogás, como mínimo
# of a0aaf5f4, reviewed: false
mix-holds-least-total-solids = La mezcla es tan aguada como se permite ({ $bound }). Un paso más sería una mezcla más aguada en { $step }.
# of e371fa9c, reviewed: false
mix-holds-largest-total-solids = La mezcla es tan espesa como se permite ({ $bound }). Un paso más sería una mezcla más espesa en { $step }.
# of 29a1dc9a, reviewed: false
mix-holds-least-ratio = La alimentación es tan rica en nitrógeno como se permite ({ $bound }). Un paso más sería una relación carbono a nitrógeno más baja en { $step }.
# of 9e5ee478, reviewed: false
mix-holds-largest-ratio = La alimentación es tan pobre en nitrógeno como se permite ({ $bound }). Un paso más sería una relación carbono a nitrógeno más alta en { $step }.
# of 648d34f8, reviewed: false
mix-holds-ammonia = El amoníaco está en su límite ({ $bound }). Un paso más sería más amoníaco en { $step }.
# of f981c50f, reviewed: false
mix-holds-loading = El biodigestor recibe tanta materia orgánica como soporta ({ $bound }). Un paso más sería una carga mayor en { $step }.
# of 006ed27f, reviewed: false
mix-holds-retention = La mezcla permanece tan poco como se permite ({ $bound }). Un paso más sería una permanencia más corta en { $step }.
# of 6d0e2c5e, reviewed: false
mix-holds-crop-residues = Los residuos de cosecha, que flotan, están en su límite ({ $bound }). Un paso más sería más residuos de cosecha en { $step }.
# of 7e11d20f, reviewed: false
mix-holds-water = Se usa toda el agua ({ $bound }). Un paso más sería { $step } más de agua.
# of 9fc2c3f8, reviewed: false
mix-holds-available = Se usa todo lo que hay de { $of } ({ $bound }). Un paso más sería { $step } más.
# of 631a211b, reviewed: false
mix-holds-share = { $of } está en su mayor parte de los sólidos volátiles ({ $bound }). Un paso más sería una parte mayor en { $step }.
# of b9854233, reviewed: false
mix-holds-gas-demand = Decide el gas que se pide ({ $bound }). Un paso más sería pedir { $step } menos de gas.
# of cb474b6e, reviewed: false
mix-step-brings-gas = Eso aportaría { $gas } de biogás.
# of ffdd5a42, reviewed: false
mix-step-saves = Eso ahorraría { $cost } al día en la moneda de los precios.
# of ff1c830d, reviewed: false
mix-step-eases = Eso bajaría en { $share } el mayor uso de lo que hay (en puntos).
# of 9ecd5073, reviewed: false
mix-step-nothing = Eso por sí solo no aportaría nada.
# of 60ed7e9c, reviewed: false
mix-none = Ninguna mezcla de lo que hay respeta todos los límites. Un límite que se afloja cuesta seguridad de operación: lea los hallazgos de la receta que pida con él. Ningún límite de operación se ofrece más de cuatro veces más amplio; donde eso no alcanza, hacen falta otros sustratos.
# of 54cc0966, reviewed: false
mix-allow-least-total-solids = Permita una mezcla más aguada: { $after } en lugar de { $before }.
# of bb94a2c7, reviewed: false
mix-allow-largest-total-solids = Permita una mezcla más espesa: { $after } en lugar de { $before }.
# of 2b07d548, reviewed: false
mix-allow-least-ratio = Permita una relación carbono a nitrógeno más baja: { $after } en lugar de { $before }.
# of cb6ca7c8, reviewed: false
mix-allow-largest-ratio = Permita una relación carbono a nitrógeno más alta: { $after } en lugar de { $before }.
# of 57545278, reviewed: false
mix-allow-ammonia = Permita más amoníaco: { $after } en lugar de { $before }.
# of b48ada11, reviewed: false
mix-allow-loading = Permita una carga mayor: { $after } en lugar de { $before }.
# of 52cd0822, reviewed: false
mix-allow-retention = Permita una permanencia más corta: { $after } en lugar de { $before }.
# of 7fecc8d3, reviewed: false
mix-allow-crop-residues = Permita más residuos de cosecha: { $after } en lugar de { $before }.
# of d1173418, reviewed: false
mix-allow-water = Permita más agua: { $after } en lugar de { $before }.
# of 9b8d68a2, reviewed: false
mix-allow-available = Permita más { $of }: { $after } en lugar de { $before }.
# of f04285d9, reviewed: false
mix-allow-share = Permita una parte mayor de { $of }: { $after } en lugar de { $before }.
# of 3890f6e8, reviewed: false
mix-allow-gas-demand = Permita pedir menos gas: { $after } en lugar de { $before }.
# of 565583d9, reviewed: false
mix-proved = Ninguna mezcla dentro de los límites es mejor en más que esta parte, según el modelo y las cifras típicas.
# of ef80a418, reviewed: false
mix-price-unknown = No se indicó precio.
