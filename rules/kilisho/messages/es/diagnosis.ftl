# of b41e65bc, reviewed: false
diagnosis-gas-below = Menos gas del que da esta alimentación aun en el peor de estos biodigestores: busque primero una fuga, luego acidez, frío, costra y lodo, y considere si la alimentación es de verdad la indicada.
# of 58cfb554, reviewed: false
diagnosis-gas-inside = El gas está dentro de lo que da esta alimentación en este biodigestor, así que no hace falta ninguna falla para explicarlo. Para más gas hace falta más o mejor alimentación o un biodigestor más cálido; una caída dentro de este rango puede ser, aun así, el comienzo de un problema.
# of 6a732288, reviewed: false
diagnosis-gas-above = Más gas del que da esta alimentación: revise el registro de alimentación y de gas, y la unidad del medidor.
# of f8180bd6, reviewed: false
diagnosis-gas-not-measured = No se indicó gas medido, así que no se puede decir si llega menos de lo debido: lea un medidor o cuente horas de quemador.
# of a2bbf02d, reviewed: false
diagnosis-gas-unknown = Sin biodigestor ni alimentación no se sabe cuánto gas debería llegar, así que no se puede decir si llega menos de lo debido.
# of 8dc13c4d, reviewed: false
diagnosis-statement = El orden de las causas es un juicio a partir de lo indicado, no un hallazgo: compruebe antes de abrir o reconstruir nada, y tenga en cuenta que dos problemas pueden venir juntos. Lo que nadie indicó es desconocido y no habla ni a favor ni en contra. Las partes son fracciones del peso de las causas a cuyo favor habla algo indicado, y de otra cosa. Nadie entra en un biodigestor ni en una fosa, y nadie busca gas con una llama.
# of 6606fc70, reviewed: false
diagnosis-not-met = No se cumple: { $title }
# of 065d470d, reviewed: false
diagnosis-act-at-once = Actúe de inmediato: { $names }.
# of 387b0c32, reviewed: false
diagnosis-likeliest = Lo indicado habla sobre todo a favor de: { $name } ({ $share } del peso).
# of 95990c9f, reviewed: false
diagnosis-nothing-speaks = Nada de lo indicado habla a favor de alguna causa del libro de reglas; las pruebas que siguen son las que piden las causas comunes.
# of 73f61bd2, reviewed: false
diagnosis-facts = { $names }
