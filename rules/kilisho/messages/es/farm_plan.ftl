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
# of 58e30a8b, reviewed: false
plan-charged-once = este tipo de biodigestor se carga una vez y se deja; pregunte a batch-rotation por su gas y sus próximas cargas
# of 41cddbb2, reviewed: false
plan-left-over = La finca tiene { $mass } más de alimentación de lo que se da a este biodigestor: queda para el campo, o para un biodigestor más grande. Darlo también dejaría a cada kilogramo menos tiempo en el biodigestor.
