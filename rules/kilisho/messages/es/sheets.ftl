# of 35bb1299, reviewed: false
sheet-dangers = Lea esto primero
# of 0c7823e8, reviewed: false
sheet-container = Recipiente
# of 7508da17, reviewed: false
sheet-dung-or-feed = Estiércol o material
# of 7ca7dea9, reviewed: false
sheet-water = Agua
# of 26a42b03, reviewed: false
sheet-urine = Orina
# of 4aab9349, reviewed: false
sheet-full-weighs = Lleno, uno pesa
# of 10ce92c5, reviewed: false
sheet-container-of = { $name }, { $volume }
# of 39132c40, reviewed: false
sheet-whole-containers = Recipientes enteros
# of e08c0aa8, reviewed: false
sheet-days = Días
# of cf9c7aa2, reviewed: false
sheet-when = Cuándo
# of 9b8617fd, reviewed: false
sheet-again-every = Cada
# of 200651a8, reviewed: false
sheet-once = una vez
# of f47f1edc, reviewed: false
sheet-what-to-do = Qué hacer
# of b833d36f, reviewed: false
sheet-day = día { $day }
# of f6b2cdc9, reviewed: false
sheet-later-days =
    { $count ->
        [one] Un día posterior está en el calendario.
       *[other] { $count } días posteriores están en el calendario.
    }
# of 6e177bda, reviewed: false
sheet-failed = No está como debe: esto no se cumple
# of 474cd296, reviewed: false
sheet-failed-title = { $title }.
# of 117adf01, reviewed: false
sheet-unknown = No se sabe
# of 33f4cf39, reviewed: false
sheet-unknown-dangers = Nadie dijo si esto se cumple. Hasta que alguien lo haya mirado, nada de esto es seguro.
# of b48b0d4d, reviewed: false
sheet-unknown-others =
    { $count ->
        [one] A un control más, de menor peso, le falta un dato; la respuesta completa lo lista.
       *[other] A { $count } controles más, de menor peso, les falta un dato; la respuesta completa los lista.
    }
# of 68f881db, reviewed: false
sheet-all-known = Se pudieron hacer todos los controles de este plan.
# of 7359807c, reviewed: false
sheet-measure = Mida esto primero, para cifras más seguras
# of a08fcd84, reviewed: false
sheet-care = Tenga cuidado
# of c840421a, reviewed: false
sheet-lesser-cautions =
    { $count ->
        [one] Una advertencia menor se omite aquí para dar los peligros también en inglés; la respuesta completa la lista.
       *[other] { $count } advertencias menores se omiten aquí para dar los peligros también en inglés; la respuesta completa las lista.
    }
# of 8a7525b1, reviewed: false
sheet-notes = Notas
# of b5f82bb7, reviewed: false
sheet-pair = { $name }: { $value }
# of 287ea966, reviewed: false
sheet-brackets = Los números entre paréntesis son el rango en que están nueve de diez casos.
# of 3cc70d06, reviewed: false
sheet-assumed =
    { $count ->
        [one] Se supuso una cifra donde no se indicó nada; la respuesta la lista.
       *[other] Se supusieron { $count } cifras donde no se indicó nada; la respuesta las lista.
    }
# of b6b2c0c9, reviewed: false
sheet-worked-out = Calculado por Kilisho con el libro de reglas { $id } { $version } ({ $hash }).
# of fc2ff759, reviewed: false
sheet-not-reviewed = Ningún hablante ha revisado todavía esta traducción. En caso de duda, pregunte a alguien que lea inglés.
# of 1a9b10b0, reviewed: false
sheet-untranslated =
    { $count ->
        [one] Una frase está en inglés por falta de traducción.
       *[other] { $count } frases están en inglés por falta de traducción.
    }
# of 123fd666, reviewed: false
signal-danger = peligro
# of 4bd9354b, reviewed: false
signal-warning = advertencia
# of 3cf083c2, reviewed: false
signal-caution = precaución
# of 9368a7d2, reviewed: false
signal-notice = aviso
# of 54263957, reviewed: false
sheet-charge-title = Primera carga
# of 09153c03, reviewed: false
sheet-what-goes-in = Lo que entra
# of 6424ffa1, reviewed: false
sheet-in-one-go = De una sola vez, cuando todo esté confirmado
# of ac5b36b6, reviewed: false
sheet-slurry = Mezcla
# of 597ff84f, reviewed: false
sheet-same-in-containers = Lo mismo, en recipientes enteros
# of 80234c2b, reviewed: false
sheet-work = { $hours } de trabajo.
# of d9d08026, reviewed: false
sheet-work-days =
    { $days ->
        [one] { $hours } de trabajo, en un día con las personas que ayudan.
       *[other] { $hours } de trabajo, en { $days } días con las personas que ayudan.
    }
# of f5039ddd, reviewed: false
sheet-confirm = Confirme antes de llenar
# of 90305c1b, reviewed: false
sheet-confirm-state = { $name }:
# of 9599915b, reviewed: false
sheet-confirmed = confirmado
# of affdb72f, reviewed: false
sheet-refused = NO SE CUMPLE: no llene
# of f7e9cc9a, reviewed: false
sheet-state-unknown = no se sabe: no llene antes de saberlo
# of ec614930, reviewed: false
sheet-gather = Junte lo suficiente
# of 76308488, reviewed: false
sheet-start-by = Para tener lo suficiente el día del llenado, empiece a más tardar el { $date }.
# of fa8386c6, reviewed: false
sheet-from = De { $name }: { $mass }.
# of b9f7be15, reviewed: false
sheet-ways = Maneras de cubrir lo que falta:
# of 21718460, reviewed: false
sheet-no-way = Faltan { $mass }, y esta finca no tiene ninguna manera de cubrirlo.
# of ce7f082d, reviewed: false
sheet-heap = El montón
# of 8df80bf9, reviewed: false
sheet-first-flame = Primer gas y primera llama
# of 949f0fcd, reviewed: false
sheet-may-not-start = Esta carga quizá no arranque por sí sola. Consiga digestato de un biodigestor en marcha.
# of 8b9ef43b, reviewed: false
sheet-burns-after = Gas que arde al cabo de { $modelled } según el modelo del proceso, de { $practice } en la práctica. No pruebe ninguna llama antes de su día, indicado arriba.
# of b6e6165f, reviewed: false
sheet-burns-in-practice = Al cabo de { $practice } en la práctica. No pruebe ninguna llama antes de su día, indicado arriba.
# of 630c478b, reviewed: false
sheet-then-feed = Luego alimente, { $steps }.
# of 79099ed7, reviewed: false
sheet-from-day = desde el día { $day } con { $feed }
# of a4cc3298, reviewed: false
sheet-feed-title = Alimentar el biodigestor
# of d16af94c, reviewed: false
sheet-at-each-feeding = En cada alimentación, cada { $every }
# of b79e2300, reviewed: false
sheet-at-each-feeding-daily = En cada alimentación, todos los días
# of 31eecde3, reviewed: false
sheet-weighed = Lo mismo, pesado y medido
# of 4852ca70, reviewed: false
sheet-urine-for-water = Orina, en lugar de agua
# of 7ef84dcd, reviewed: false
sheet-expect = Qué esperar
# of bb75a604, reviewed: false
sheet-mean-of-year = En la media del año
# of 49c579d7, reviewed: false
sheet-left-over = No se da, para el campo
# of 52cbe86b, reviewed: false
sheet-gas-as-used = Gas, tal como se usa
# of 1bebe9c4, reviewed: false
sheet-digestate = Digestato
# of bd2d0cb4, reviewed: false
sheet-retention = Tiempo de retención hidráulica
# of fe380a99, reviewed: false
sheet-storing = Guardar, y después de alimentaciones perdidas
# of 500e8043, reviewed: false
sheet-largest-feeding = En una alimentación, a lo sumo { $mass }.
# of b659f006, reviewed: false
sheet-missed =
    { $missed ->
        [one] Se perdió una alimentación: repóngala a lo largo de { $over } alimentaciones.
       *[other] Se perdieron { $missed } alimentaciones: repóngalas a lo largo de { $over } alimentaciones.
    }
# of 3246953f, reviewed: false
sheet-plan-title = Plan de biogás
# of ef1852a3, reviewed: false
sheet-from-on = Desde el { $date }; antes, como dicen los días de abajo.
# of 9daedf56, reviewed: false
sheet-bucket-weighs = { $container }; lleno de material, uno pesa { $load }.
# of c928adf3, reviewed: false
sheet-in-numbers = El plan en números
# of 38b61cfc, reviewed: false
sheet-built-already = El biodigestor ya está elegido o construido.
# of 31cc12b5, reviewed: false
sheet-volume-in-all = Biodigestor, en total
# of 4b0830cb, reviewed: false
sheet-gas-store = Gas que guarda
# of fdfcfebf, reviewed: false
sheet-charge-feed = Primer llenado, material
# of f77b4ee6, reviewed: false
sheet-charge-water = Primer llenado, agua
# of e066e3f3, reviewed: false
sheet-charge-in = Primer llenado, { $name }
# of 7dea4fa1, reviewed: false
sheet-feed-and-water = { $feed } de material, { $water } de agua
# of 355e8bdf, reviewed: false
sheet-missing-so-far = Falta hasta ahora
# of 48ed126b, reviewed: false
sheet-gas-wanted = Gas que se quiere
# of 148753e4, reviewed: false
sheet-of-it-covered = { $gas }, cubierto { $share }
# of f77ab324, reviewed: false
sheet-enough-for = Alcanza para
# of 56df9237, reviewed: false
sheet-year = El gas en el primer año
# of e24ea360, reviewed: false
sheet-year-caption = Cada barra es el gas típico de su mes en m³ al día; la línea vertical, lo que obtendrían nueve de diez fincas así.
# of bacee11c, reviewed: false
sheet-year-starts = Una carga así arranca por sí sola solo en { $starts } de los casos. Si no, estas barras son gas que no arde: agregue digestato de un biodigestor en marcha y espere a alimentar hasta que arda.
# of 6d6d7319, reviewed: false
sheet-left-out = No está en este plan: { $operation }, porque { $because }.
# of d6f81311, reviewed: false
operation-sizing = Dimensionamiento
# of 54263957, reviewed: false
operation-first_charge = Primera carga
# of 3be6d193, reviewed: false
operation-maintenance_feed = Alimentación de mantenimiento
# of 54101007, reviewed: false
operation-gas_forecast = Pronóstico de gas
# of 6b8ec261, reviewed: false
operation-gas_use = Uso del gas
# of 1bebe9c4, reviewed: false
operation-digestate = Digestato
# of e92cb2cb, reviewed: false
operation-safety_check = Control de seguridad
