# of 80b50150, reviewed: false
sentences-2 = { $first } { $second }
# of fefbd491, reviewed: false
assumed-structure = No se indicó el tipo de biodigestor.
# of 3466065f, reviewed: false
assumed-substrate = No se indicó ni el hato ni la alimentación.
# of 5117f4c5, reviewed: false
assumed-housing = No se indicó el alojamiento de { $animal }.
# of 47c4e6f1, reviewed: false
assumed-altitude = Nadie dijo a qué altitud está el lugar; cuanto más alto, más espacio ocupa el gas.
