# of 80b50150, reviewed: false
sentences-2 = { $first } { $second }
# of fefbd491, reviewed: false
assumed-structure = Aina ya mtambo wa biogesi haikutajwa.
# of 3466065f, reviewed: false
assumed-substrate = Mifugo haikutajwa wala malisho ya mtambo hayakutajwa.
# of 5117f4c5, reviewed: false
assumed-housing = Mahali { $animal } anapofugwa hapakutajwa.
# of 47c4e6f1, reviewed: false
assumed-altitude = Hakuna aliyesema mahali hapo pako juu kiasi gani; kadiri palivyo juu, ndivyo gesi inavyochukua nafasi kubwa zaidi.
