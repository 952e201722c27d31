# of 88c565d0, reviewed: false
rotation-first-charge = Llénelo y ciérrelo. Deje salir el primer gas al aire libre, sin quemarlo, y mantenga lejos toda llama.
# of 1a4b614e, reviewed: false
rotation-recharge = Llénelo otra vez cuando esté vacío, y ciérrelo. Ábralo solo sin presión y con todas las llamas apagadas, ventílelo, vacíelo desde afuera y no entre nunca. Deje salir el primer gas al aire libre, sin quemarlo.
# of 131be986, reviewed: false
rotation-emptying = Ábralo solo sin presión y con todas las llamas apagadas, ventílelo, vacíelo desde afuera y no entre nunca.
# of b8bc281f, reviewed: false
rotation-first-day-unknown = Nadie dijo cuándo es la primera carga; las estaciones se cuentan desde Año Nuevo.
