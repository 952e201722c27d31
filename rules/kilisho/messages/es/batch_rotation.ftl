# of 88c565d0, reviewed: false
rotation-first-charge = Llénelo y ciérrelo. Deje salir el primer gas al aire libre, sin quemarlo, y mantenga lejos toda llama.
# of 38618325, reviewed: false
rotation-recharge = Llénelo otra vez y ciérrelo; se vació en los días desde emptying_from. Ábralo solo sin presión y con todas las llamas apagadas, ventílelo, vacíelo desde afuera y no entre nunca. Deje salir el primer gas al aire libre, sin quemarlo.
# of b8bc281f, reviewed: false
rotation-first-day-unknown = Nadie dijo cuándo es la primera carga; las estaciones se cuentan desde Año Nuevo.
