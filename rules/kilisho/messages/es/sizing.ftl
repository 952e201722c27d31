# of ec77c8a1, reviewed: false
storage-by-hours = horas de uso
# of 37119e7e, reviewed: false
storage-by-share = parte del gas de un día
# of 569344ea, reviewed: false
trade-size = El oficio dimensiona por estiércol y volumen de la planta sin mirar la temperatura; este tamaño mantiene { $retention } de retención en el mes más frío a { $temperature }. Una planta menor cuesta menos y da menos gas del mismo estiércol.
# of b4b73bce, reviewed: false
dimensions-statement = Medidas interiores para planificar. El diseño estructural, la excavación y los materiales corresponden a un ingeniero o albañil autorizado y al reglamento local.
# of 21ecdcbd, reviewed: false
dome-statement = Para estas medidas de planificación. La presión depende de los niveles del plano real; la presión de diseño de una cúpula, su rebose y sus pruebas corresponden a un ingeniero autorizado y al reglamento local.
