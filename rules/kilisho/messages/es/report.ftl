# of 57d30a6a, reviewed: false
report-title = Informe sobre un conjunto de biodigestores
# of 784aeef6, reviewed: false
report-installations = { $count ->
    [one] Una instalación
   *[other] { $total } instalaciones
}
# of ad2cc12e, reviewed: false
report-invented = Estas instalaciones son inventadas; ninguna fila es real.
# of 7a971a11, reviewed: false
report-invented-some = { $total } de estas instalaciones son inventadas; ninguna de ellas es real.
# of 04e52f1f, reviewed: false
report-what = Qué se encontró
# of 37bac495, reviewed: false
report-count = Cantidad
# of 29887a5f, reviewed: false
report-share = Proporción
# of b8cafa41, reviewed: false
report-dangerous = Peligrosas
# of 6c10b73f, reviewed: false
report-doubtful = Número que no puede ser correcto
# of fddcb6ed, reviewed: false
report-mis_sized = Tamaño equivocado
# of d8a80393, reviewed: false
report-starved = Alimentación muy escasa
# of ab65ba09, reviewed: false
report-fed_wrongly = Mal alimentadas de otro modo
# of edad8105, reviewed: false
report-underperforming = Muy poco gas
# of 497d07e8, reviewed: false
report-unknown = No se sabe lo suficiente
# of 42e3a5bb, reviewed: false
report-refused = No se pueden leer
# of 4fa61d63, reviewed: false
report-sound = En buen estado en todo lo que se pregunta
# of 6152ad09, reviewed: false
report-several = Una instalación puede figurar en varias de estas filas.
# of e77ab7c5, reviewed: false
report-dangers = Vaya primero allí: no se cumplió un control de nivel de peligro
# of 07298b3a, reviewed: false
report-dangers-none = Ningún control de nivel de peligro dejó de cumplirse en lo que se indicó. Eso no significa que haya seguridad: vea lo que nadie indicó.
# of 96a91c4f, reviewed: false
report-dangers-none-read = Ningún control de nivel de peligro dejó de cumplirse en las filas que se pudieron leer. Eso no significa que haya seguridad: vea lo que nadie indicó.
# of 34753ae9, reviewed: false
report-unjudged =
    { $count ->
        [one] Una fila no se pudo leer: lo que indica sobre peligros no se juzgó.
       *[other] { $total } filas no se pudieron leer: lo que indican sobre peligros no se juzgó.
    }
# of 988481e1, reviewed: false
report-open = Nadie ha descartado estos peligros
# of 95b6e636, reviewed: false
report-open-lead = En { $total } de { $rows } instalaciones, al menos un control de nivel de peligro no tiene respuesta. Hasta que alguien haya mirado, ninguna de ellas es segura.
# of 424f0420, reviewed: false
report-open-one = { $check }: no se sabe en { $share }
# of 02ba30dc, reviewed: false
report-open-others = { $count ->
    [one] Un control más de nivel de peligro no tiene respuesta en algún lugar.
   *[other] { $count } controles más de nivel de peligro no tienen respuesta en algún lugar.
}
# of 2a0c6f15, reviewed: false
report-verdicts = Veredictos
# of 4a36f89d, reviewed: false
report-verdict = Veredicto
# of 1bb8bf6e, reviewed: false
report-verdict-refused = La fila no se puede leer; las respuestas dicen qué está mal en ella.
# of ee4a048b, reviewed: false
report-by = Por { $column }
# of 109df22c, reviewed: false
report-no-place = no indicado
# of 94925bed, reviewed: false
report-other-places = { $count } menores en conjunto
# of 4a10cab9, reviewed: false
report-worst = Las peores, y qué hacer primero
# of 1896ccc6, reviewed: false
report-worst-none = Ningún control de nivel de precaución o más grave dejó de cumplirse.
# of 29b44be6, reviewed: false
report-which = Cuál
# of 325bab99, reviewed: false
report-row = fila { $row }
# of 5ccb1f01, reviewed: false
report-first = Qué está mal, y qué hacer primero
# of 710c9d28, reviewed: false
report-more = { $count ->
    [one] No se cumplió un control más.
   *[other] No se cumplieron { $count } controles más.
}
# of bc8a4dde, reviewed: false
report-slip = { $member } es probablemente { $value }: el número de la fila es correcto si se lee como { $written }.
# of 4cd88e5c, reviewed: false
report-slip-decimal_point = { $member } es probablemente { $value }: su punto decimal está corrido.
# of 68d9b71b, reviewed: false
report-slips = Números escritos probablemente en otra unidad
# of a3629419, reviewed: false
report-slips-lead = Donde pasa en casi todas las filas de una columna, toda la columna está probablemente en otra unidad. Averigüe en cuál antes de convertirla y volver a responder la tabla: una cantidad por semana o por mes también parece un punto decimal corrido.
# of 7d2d6d5a, reviewed: false
report-slips-as = Leído como
# of 1d447bfc, reviewed: false
report-slips-point = punto decimal corrido
# of 76026f0d, reviewed: false
report-failed = Lo que más a menudo no se cumple
# of 9d60841e, reviewed: false
report-check = Control
# of 41f4b598, reviewed: false
report-not-so = No se cumple: { $title }
# of f47f1edc, reviewed: false
report-do = Qué hacer
# of 0a6f5912, reviewed: false
report-faults = Filas que no se pueden leer
# of 8e86ab6b, reviewed: false
report-fault = Columna y falta
# of b8333003, reviewed: false
report-fault-cell_unreadable = no es un valor que la columna acepte
# of 40582388, reviewed: false
report-fault-date_expected = no es un día existente escrito YYYY-MM-DD
# of ae21539b, reviewed: false
report-fault-list_expected = no es una lista de palabras que la columna conozca
# of 3aeaff1c, reviewed: false
report-fault-not_one_of = no es una palabra que la columna conozca
# of b43426f0, reviewed: false
report-fault-number_expected = no es un número; los decimales van tras un punto
# of f84cbaff, reviewed: false
report-fault-out_of_range = un número fuera de los límites de la columna
# of c33221b5, reviewed: false
report-fault-row_unreadable = la fila entera no se puede leer
# of f9a9ad42, reviewed: false
report-fault-text_expected = texto vacío o demasiado largo
# of 5748f768, reviewed: false
report-fault-unit_expected = la unidad no es texto
# of 0ee7d20c, reviewed: false
report-fault-unknown_id = no es un identificador del libro de reglas
# of 1b4d8f61, reviewed: false
report-fault-unknown_unit = no es una unidad que la columna conozca
# of 1d0ee030, reviewed: false
report-fault-value_and_unit = no es un valor con su unidad
# of 813bb0fa, reviewed: false
report-fault-whole_number_expected = no es un número entero
# of 61973d0e, reviewed: false
report-fault-yes_no_expected = ni verdadero ni falso (true, false)
# of 6fe10037, reviewed: false
report-unstated = Lo que nadie indicó
# of 009e7567, reviewed: false
report-unstated-record = El { $share } % de las celdas del registro está vacío.
# of 4e901740, reviewed: false
report-unstated-facts = De { $facts } hechos adicionales que una tabla puede indicar, { $never } no figuran en ninguna fila.
# of 3fdc9a58, reviewed: false
report-column = Columna
# of 068109fd, reviewed: false
report-left-out = No indicado
# of 5329f90c, reviewed: false
report-unread = Columnas que no se leyeron
# of dc3f3b77, reviewed: false
report-unread-lead = No se lee ninguna columna con estos nombres. Busque los que estén mal escritos.
# of 34996ab7, reviewed: false
report-order = Las peores se determinan por su veredicto, luego por cuántos controles de nivel de peligro y de advertencia no se cumplieron, luego por lo poco que dan de gas.
