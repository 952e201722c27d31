# of 4545f96b, reviewed: false
digestate-balance = La masa de mezcla que entra es la masa de digestato que sale más la de gas; lo que se volvió gas falta en la materia orgánica. La arena que se asienta se cuenta con el digestato: sale cuando se vacía el biodigestor.
# of fe71bfaf, reviewed: false
digestate-nitrogen = Todo el nitrógeno que entra sale con el digestato: la digestión convierte parte en amonio, que las plantas toman enseguida y el aire se lleva con la misma facilidad. Lo que pierden el depósito y el campo es amoníaco; lo que está ligado a la materia orgánica llega con los años.
# of 2208941c, reviewed: false
digestate-phosphorus = Todo el fósforo que entra sale con el digestato, salvo lo que se asienta con el lodo y sale cuando este se retira.
# of b9c216c0, reviewed: false
digestate-potassium = Todo el potasio que entra queda disuelto y sale con el digestato; un depósito abierto o con fugas lo deja lavar.
# of 095ed5ce, reviewed: false
digestate-nutrient-unknown = No se indica: nadie sabe cuánto contienen estos sustratos. Indíquelo con la cifra de un laboratorio.
# of 4fcfa53e, reviewed: false
digestate-fertiliser = Fertilizante comprado que aporta el nitrógeno que las plantas encuentran en el primer año, y el fósforo y el potasio completos. El digestato aporta además materia orgánica, cosa que ningún fertilizante hace.
# of 290e1409, reviewed: false
digestate-limit-elsewhere = Nadie indicó un límite local. Esta es una regla común en otros lugares, mostrada como referencia y no aplicada: primero las reglas locales.
# of f187821e, reviewed: false
digestate-limit-stated = El límite indicado se respeta: ningún campo recibe más.
# of f9282b24, reviewed: false
digestate-not-safe = Un biodigestor doméstico no higieniza, sea cual sea su temperatura y su retención: parte de los gérmenes y de los huevos de lombrices parásitas sobrevive. Los tiempos de espera reducen el riesgo y no lo quitan; lave, pele y cocine lo que crece en suelo abonado.
# of 00abdbd9, reviewed: false
digestate-excreta-first = Con excretas humanas en la alimentación, guárdelo primero tanto tiempo como aquí se dice y manténgalo lejos de todo lo que se come crudo.
# of 66f16f64, reviewed: false
digestate-waiting = Desde el último digestato hasta la cosecha, el corte o el pastoreo; el mayor plazo que pide algún control del libro de reglas. Primero las reglas locales.
# of 5b0559ca, reviewed: false
digestate-store = Paredes verticales; una fosa con taludes necesita más espacio en el borde. La lluvia que cae en un depósito abierto se suma y lo que se evapora se resta: ninguna de las dos se cuenta. El depósito debe ser hermético, estar cuesta abajo de los pozos, y estar tapado o cercado para que no caiga ningún niño ni ningún animal.
# of 699d607e, reviewed: false
digestate-store-overflows = El depósito que hay rebosa antes del próximo esparcido: esparza antes sobre lo que crece o construya uno mayor.
# of 842d8603, reviewed: false
digestate-store-unknown = Nadie dijo cómo se guarda el digestato hasta esparcirlo.
# of 5031e54c, reviewed: false
digestate-spreading-unknown = Nadie dijo cómo se esparce el digestato.
# of f2bff4c5, reviewed: false
digestate-urine-unknown = No se indicó la orina; la que se mezcla aporta más nitrógeno y potasio.
