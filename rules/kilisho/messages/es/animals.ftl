# of bcd45182, reviewed: false
animals-dairy_cow-name = Vaca lechera, cruzada o mejorada
# of c32bf8a2, reviewed: false
animals-local_cow-name = Vaca o buey criollo
# of 38faefb7, reviewed: false
animals-buffalo-name = Búfalo, adulto
# of 6551fc6c, reviewed: false
animals-sow-name = Cerda con camada
# of 0e0d92eb, reviewed: false
animals-fattening_pig-name = Cerdo de engorde
# of ea14b811, reviewed: false
animals-layer_hen-name = Gallina ponedora
# of d484e7dc, reviewed: false
animals-broiler-name = Pollo de engorde, promedio de su vida
# of d1c9e8b5, reviewed: false
animals-broiler-description = La cifra diaria es de cama (gallinaza seca con material de cama) por ave, porque eso es lo que rinde el corral.
# of bb8a7c9a, reviewed: false
animals-goat-name = Cabra, adulta
# of 27151e55, reviewed: false
animals-sheep-name = Oveja, adulta
# of 34605f1b, reviewed: false
animals-horse-name = Caballo, pequeño, de trabajo
# of 1ebc55c5, reviewed: false
animals-donkey-name = Burro
# of e551d7a8, reviewed: false
animals-rabbit-name = Coneja de cría
# of 4353d8da, reviewed: false
animals-person-name = Persona que usa una letrina que descarga en el biodigestor
# of b5c70050, reviewed: false
animals-person-description = El tipo de encierro se lee como uso de la letrina: stall para personas que están en casa todo el día, night_pen para personas que salen de día, grazing si no hay letrina conectada.
