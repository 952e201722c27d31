# of a228c279, reviewed: false
installation-verdict-danger = Un control de nivel de peligro no se cumplió: detenga lo que nombra y arréglelo antes que nada.
# of 7397429a, reviewed: false
installation-verdict-doubtful = Un número del registro no puede ser correcto; lo que se deduce de él no se juzga hasta que se corrija.
# of b20f3559, reviewed: false
installation-verdict-faulty = Falla el tamaño, la alimentación o el gas; los hallazgos dicen qué hacer.
# of 355ef7e2, reviewed: false
installation-verdict-attention = No hay falla de tamaño, alimentación ni gas, pero no se cumplió un control de nivel de advertencia o precaución.
# of 69549c4b, reviewed: false
installation-verdict-unknown = Nada de lo indicado incumple un control, pero no se indicó todo: esto no es un certificado de buen estado.
# of 6360cabb, reviewed: false
installation-verdict-sound = Se respondieron todos los controles y ninguno de nivel de precaución o mayor dejó de cumplirse.
# of 597bdb35, reviewed: false
installation-substrate = No se indicó con qué se alimenta: lo que da el animal.
# of 721ae5e0, reviewed: false
installation-housing = No se indicó dónde están los animales.
