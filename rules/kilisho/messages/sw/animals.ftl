# of bcd45182, reviewed: false
animals-dairy_cow-name = Ng'ombe wa maziwa, chotara au aliyeboreshwa
# of c32bf8a2, reviewed: false
animals-local_cow-name = Ng'ombe wa kienyeji, jike au maksai
# of 38faefb7, reviewed: false
animals-buffalo-name = Nyati, aliyekomaa
# of 6551fc6c, reviewed: false
animals-sow-name = Nguruwe jike mwenye watoto
# of 0e0d92eb, reviewed: false
animals-fattening_pig-name = Nguruwe wa kunenepeshwa
# of ea14b811, reviewed: false
animals-layer_hen-name = Kuku wa mayai
# of d484e7dc, reviewed: false
animals-broiler-name = Kuku wa nyama, wastani wa maisha yake
# of d1c9e8b5, reviewed: false
animals-broiler-description = Kiasi cha siku ni samadi ya banda (kinyesi kikavu pamoja na matandazo) kwa kila kuku, kwa kuwa hicho ndicho banda linachotoa.
# of bb8a7c9a, reviewed: false
animals-goat-name = Mbuzi, aliyekomaa
# of 27151e55, reviewed: false
animals-sheep-name = Kondoo, aliyekomaa
# of 34605f1b, reviewed: false
animals-horse-name = Farasi, mdogo wa kazi
# of 1ebc55c5, reviewed: false
animals-donkey-name = Punda
# of e551d7a8, reviewed: false
animals-rabbit-name = Sungura, jike la kuzalisha
# of 4353d8da, reviewed: false
animals-person-name = Mtu anayetumia choo kinachotiririsha kwenye mtambo wa biogesi
# of b5c70050, reviewed: false
animals-person-description = Ufugaji husomwa kama matumizi ya choo: stall kwa watu walio nyumbani siku nzima, night_pen kwa watu wasiokuwepo mchana, grazing pasipo na choo kilichounganishwa.
