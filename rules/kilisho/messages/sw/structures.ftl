# of 538fdf01, reviewed: false
structures-fixed_dome-name = Kuba isiyosogea
# of d76440f1, reviewed: false
structures-fixed_dome-description = Kuba ya uashi iliyo chini ya ardhi; gesi husukuma tope hadi kwenye tanki la kusawazisha, hivyo presha hupanda kadiri gesi inayohifadhiwa inavyoongezeka.
# of aeaf9908, reviewed: false
structures-floating_drum-name = Pipa la gesi linaloelea
# of 6271b690, reviewed: false
structures-floating_drum-description = Shimo la silinda lenye pipa la gesi la chuma au plastiki linaloinuliwa na gesi; presha haibadiliki na huamuliwa na uzito wa pipa la gesi.
# of 0531bb8d, reviewed: false
structures-bag-name = Mfuko au mrija wa plastiki
# of b463bbfa, reviewed: false
structures-bag-description = Mrija wa plastiki ulio ndani ya mtaro, unaojazwa upande mmoja na kutolewa tope upande mwingine; gesi hukusanyika chini ya plastiki ya juu.
# of 1d188047, reviewed: false
structures-batch_tank-name = Tanki la kujazwa mara moja
# of 3a03fa05, reviewed: false
structures-batch_tank-description = Tanki lililofungwa ambalo hujazwa mara moja kwa ujazaji mzito, huachwa kwa wiki kadhaa, kisha humwagwa na kujazwa tena.
