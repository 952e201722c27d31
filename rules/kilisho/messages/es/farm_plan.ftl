# of 1bb7c8b1, reviewed: false
plan-digester-working = el biodigestor ya está en marcha
# of f1ba20eb, reviewed: false
plan-nothing-to-charge = no se indicó ni hato ni alimentación
# of c22c0026, reviewed: false
plan-no-day-of-charge = necesita una primera carga con el día en que el biodigestor está listo
# of 632dac75, reviewed: false
plan-no-use-stated = nada dice para qué se usa el gas
# of 005f34b9, reviewed: false
plan-no-crops = no se indicaron cultivos
# of 0a11c588, reviewed: false
plan-refused = { $faults }
