# of 521201d4, reviewed: false
assumed-feed = Nada dice cuánto se alimenta: es lo que mantiene el tiempo de retención de diseño.
# of b2a39951, reviewed: false
urine = Según el oficio, la orina aumenta el gas. El modelo no cuenta gas de la orina misma: ahorra agua, aporta nitrógeno y amortigua la acidez, y ayuda más donde la alimentación es pobre en nitrógeno; demasiada frena a los microbios.
# of 4d6eb8cb, reviewed: false
between-feedings = Depósito que empareja el gas entre dos alimentaciones; lo que piden las horas de uso viene además, vea el dimensionamiento.
# of e61ed34b, reviewed: false
trade-gas = El gas por cabeza que da el oficio vale para un biodigestor cálido, estiércol abundante y retención larga; aquí la mezcla está a { $temperature } y permanece { $retention }.
# of 8b7adcfd, reviewed: false
trade-gas-inside = Está dentro del rango del modelo.
# of 228421c7, reviewed: false
trade-gas-outside = Está fuera del rango del modelo: planifique con la cifra del modelo.
# of c91c43d0, reviewed: false
operation-batch-structure = Este tipo de biodigestor se carga una vez y se deja; no está hecho para alimentarlo con regularidad.
# of 1c8ef87f, reviewed: false
operation-batch-like = Con { $every } entre alimentaciones esto es alimentación por lotes: espere gas en oleadas.
# of a9ca9cf7, reviewed: false
operation-irregular = Más de { $longest } entre alimentaciones ya no es alimentación regular; el gas subirá y bajará.
# of d13160a3, reviewed: false
operation-regular = Alimentación regular: cada vez la misma cantidad.
# of 0087223a, reviewed: false
storing-fresh = Aliméntelo fresco.
# of 1cff4514, reviewed: false
storing-covered = Guarde el estiércol a la sombra y cubierto hasta usarlo, primero el más viejo; alimente cada vez la misma cantidad.
# of 64339916, reviewed: false
catching-up = Nunca alimente de una vez lo que quedó sin alimentar: a lo sumo { $extra } más de lo usual; pare si el gas baja o la mezcla se acidifica.
# of 1cc475da, reviewed: false
clean-feed = Alimente solo con estiércol limpio: saque paja, sobras, piedras y plástico, y júntelo de un piso firme.
# of 7cad3d25, reviewed: false
clean-mixing = Mezcle hasta que no queden grumos, deje reposar la mezcla un cuarto de hora para que la arena se hunda, luego déjela entrar y deje la arena atrás.
# of 163eebbb, reviewed: false
clean-tank = Saque la arena de la fosa de mezcla una vez por semana.
# of 174ae438, reviewed: false
clean-covers = Vuelva a poner las tapas de la entrada y la salida después de cada alimentación.
# of b71c10ad, reviewed: false
upkeep-feed = Alimentar: mezclar, dejar asentar la arena, dejar entrar, tapar.
# of 6182c8c1, reviewed: false
upkeep-sand = Saque la arena de la fosa de mezcla; drene el agua de condensación.
# of a74541a7, reviewed: false
upkeep-soap = Revise uniones, válvulas y aparatos con agua jabonosa.
# of 2cc82d88, reviewed: false
upkeep-desludge = Para entonces el lodo puede haber llenado su parte del biodigestor: haga que un equipo capacitado lo saque. Nadie entra.
