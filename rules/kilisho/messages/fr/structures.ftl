# of 538fdf01, reviewed: false
structures-fixed_dome-name = Dôme fixe
# of d76440f1, reviewed: false
structures-fixed_dome-description = Dôme en maçonnerie sous le sol ; le gaz pousse le substrat dans un bassin de compensation, de sorte que la pression monte avec le gaz stocké.
# of aeaf9908, reviewed: false
structures-floating_drum-name = Cloche flottante
# of 6271b690, reviewed: false
structures-floating_drum-description = Fosse cylindrique avec une cloche en acier ou en plastique qui monte sur le gaz ; la pression est constante et fixée par le poids de la cloche.
# of 0531bb8d, reviewed: false
structures-bag-name = Poche ou tube
# of b463bbfa, reviewed: false
structures-bag-description = Tube en plastique dans une tranchée, alimenté à un bout et vidé à l'autre ; le gaz s'accumule sous le film supérieur.
# of 1d188047, reviewed: false
structures-batch_tank-name = Cuve discontinue
# of 3a03fa05, reviewed: false
structures-batch_tank-description = Cuve fermée que l'on remplit une fois d'une charge épaisse, qu'on laisse pendant des semaines, puis qu'on vide et remplit de nouveau.
