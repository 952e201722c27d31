# of c960443e, reviewed: false
use-busiest-hour = la más cargada de las horas indicadas
# of 161a820c, reviewed: false
use-all-at-once = todos los aparatos a la vez
# of 89bb8a62, reviewed: false
use-cooking-hours = el gas de un día en las horas usuales de cocinar
# of e49b04c0, reviewed: false
use-no-pipe-serves = Ningún tamaño del libro de reglas respeta el límite: acorte la tubería, ponga dos o queme menos a la vez.
# of 12b8b532, reviewed: false
use-pipe-at-least = Como mínimo: { $size }. Respeta el límite aun con el caudal más alto del rango; también lo respeta toda tubería más ancha.
# of b44e3257, reviewed: false
use-hours-unknown = Indique las horas de uso de cada aparato para seguir el gas a lo largo del día.
# of 9a3b07ae, reviewed: false
use-feed-needed = Con alimentación pareja, a 25 °C y 60 días de retención; un biodigestor más frío necesita más. Dimensione el biodigestor para saberlo.
# of d3bdb65e, reviewed: false
use-for-cooking = Cocinar
# of fd1f32a1, reviewed: false
use-for-heating = Calefacción
# of 13a5aed1, reviewed: false
use-for-refrigeration = Refrigeración
# of 07607d60, reviewed: false
use-for-lighting = Iluminación
# of fc22a194, reviewed: false
use-for-shaft-power = Fuerza motriz
# of a8b41baa, reviewed: false
use-for-electricity = Electricidad
# of 171af495, reviewed: false
use-for-other = Otros usos
# of 95c849dc, reviewed: false
use-not-for-cooking = Gas para otros usos que cocinar: { $gas }. No cuenta en lugar de combustibles de cocina.
# of c454c857, reviewed: false
use-cooking-counts = Cuenta en lugar de combustibles de cocina.
# of 0583379e, reviewed: false
use-electricity-counts = No reemplaza ningún combustible de cocina. La electricidad que se genera con él cuenta en lugar de otra tanta electricidad, allí donde esta figura entre los combustibles.
# of 49de56c8, reviewed: false
use-electricity-uncounted = No reemplaza ningún combustible de cocina. La electricidad que se genera con él no cuenta para nada, porque no hay electricidad entre los combustibles: indíquela si ahora se compra o se genera.
# of 78a69778, reviewed: false
use-light-uncounted = No reemplaza ningún combustible de cocina. El queroseno de lámpara o las velas que pueda ahorrar no se cuentan: el libro de reglas no tiene cifras para comparar las lámparas por su luz.
# of c149c801, reviewed: false
use-other-uncounted = No reemplaza ningún combustible de cocina. Lo que pueda ahorrar de otra manera no se cuenta: el libro de reglas no tiene cifras con que compararlo.
# of 08ac7a42, reviewed: false
use-saves = El combustible ahorrado pesa más que el metano que se pierde, en todo el rango.
# of 2316b8bb, reviewed: false
use-harms = El metano que se pierde calienta más de lo que habría calentado el combustible ahorrado: busque las fugas y use todo el gas.
# of c35abb62, reviewed: false
use-uncertain = Las fugas y el venteo pueden anular lo que gana el combustible ahorrado: solo una planta hermética cuyo gas se usa todo ayuda con seguridad.
# of 98b6052d, reviewed: false
use-saves-with-manure = El combustible ahorrado y el metano que el estiércol ya no emite pesan más que el metano que se pierde, en todo el rango.
# of db26522d, reviewed: false
use-harms-with-manure = El metano que se pierde calienta más de lo que habrían calentado el combustible ahorrado y el metano del estiércol: busque las fugas y use todo el gas.
# of 6d727e48, reviewed: false
use-uncertain-with-manure = Las fugas y el venteo pueden anular lo que ganan el combustible ahorrado y el estiércol: solo una planta hermética cuyo gas se usa todo ayuda con seguridad.
# of faacd700, reviewed: false
use-left-out-fire = Metano, óxido nitroso y hollín del fuego que se reemplaza, y la fabricación de carbón: aumentarían lo que se ahorra.
# of c489cb1b, reviewed: false
use-left-out-uses = Lo que ahorra el gas que no es para cocinar, como queroseno de lámpara, combustible de motor o electricidad: aumentaría lo que se ahorra.
# of fca78d09, reviewed: false
use-left-out-manure = Metano que el estiércol habría emitido en un montón o en el campo, y que el biodigestor puede evitar.
# of ab6ef82e, reviewed: false
use-left-out-nitrous-oxide = Óxido nitroso que el estiércol habría emitido tal como se guardaba antes.
# of d8d72531, reviewed: false
use-left-out-slip = Metano que escapa sin quemar por el quemador, o que sale del digestato después de dejar la planta.
# of 210cb2e1, reviewed: false
use-left-out-fertiliser = El fertilizante que el digestato reemplaza y la construcción de la planta.
# of 66af6b81, reviewed: false
use-store-unknown = Nadie indicó el depósito: se toma tan grande como lo necesita este uso.
# of 6e755581, reviewed: false
use-pipe-material-unknown = Nadie lo indicó; es el más áspero.
# of b6222f78, reviewed: false
use-feed-unknown = Nadie dijo con qué se alimentaría.
# of 87fe6418, reviewed: false
use-climate-unknown = Nadie indicó la temperatura media del aire: entre fresco, templado y cálido se toma fresco, donde el estiércol emite menos metano.
