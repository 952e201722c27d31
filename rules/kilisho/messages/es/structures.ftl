# of 538fdf01, reviewed: false
structures-fixed_dome-name = Cúpula fija
# of d76440f1, reviewed: false
structures-fixed_dome-description = Cúpula de mampostería bajo tierra; el gas empuja mezcla a un tanque de compensación, así que la presión sube con el gas almacenado.
# of aeaf9908, reviewed: false
structures-floating_drum-name = Campana flotante
# of 6271b690, reviewed: false
structures-floating_drum-description = Fosa cilíndrica con una campana de acero o plástico que sube sobre el gas; la presión es constante y la fija el peso de la campana.
# of 0531bb8d, reviewed: false
structures-bag-name = Bolsa o tubo
# of b463bbfa, reviewed: false
structures-bag-description = Tubo de plástico en una zanja, que se llena por un extremo y se vacía por el otro; el gas se junta bajo la lámina superior.
# of 1d188047, reviewed: false
structures-batch_tank-name = Tanque por lotes
# of 3a03fa05, reviewed: false
structures-batch_tank-description = Tanque cerrado que se llena una vez con una carga espesa, se deja durante semanas, y luego se vacía y se llena de nuevo.
