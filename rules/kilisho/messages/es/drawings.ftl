# of b833d36f, reviewed: false
drawing-day = día { $day }
# of c0625b5f, reviewed: false
drawing-kilograms-of = { $name } [kg]
# of 54101007, reviewed: false
drawing-forecast-title = Pronóstico de gas
# of 0936ab5c, reviewed: false
drawing-forecast-gas = Gas [m³ al día]
# of 4a29712d, reviewed: false
drawing-forecast-temperature = Temperatura de la mezcla [°C]
# of 7d840dd0, reviewed: false
drawing-forecast-acid-risk = Riesgo de acidez
# of 7eaaf829, reviewed: false
drawing-forecast-first-burnable-gas = primer gas que arde
# of 9de535db, reviewed: false
drawing-forecast-key =
    Líneas: lo típico. Rayado: el rango en que están nueve de diez muestras. Cada escalón es la media de su día, semana o mes. Riesgo de acidez: rayado elevado, negro alto.
# of 6a5f27c2, reviewed: false
drawing-forecast-from =
    { $days ->
        [one] Un día desde el { $first }.
       *[other] { $days } días desde el { $first }.
    }
# of b4be1350, reviewed: false
drawing-forecast-total = En total { $gas } de gas.
# of f9bb9c25, reviewed: false
drawing-forecast-total-and-least = En total { $gas } de gas; el mínimo, { $least }, el día { $day }.
# of f22fb810, reviewed: false
drawing-forecast-burnable-after = Primer gas que arde al cabo de { $after }.
# of 4383212f, reviewed: false
drawing-forecast-share-that-starts = Arranca { $share } de las muestras.
# of 60efc574, reviewed: false
drawing-forecast-highest-acid-risk = Mayor riesgo de acidez: { $risk }.
# of 6c1ff09d, reviewed: false
acid_risk-low = bajo
# of d9325e09, reviewed: false
acid_risk-raised = elevado
# of 6ef7c9b1, reviewed: false
acid_risk-high = alto
# of 93c22646, reviewed: false
drawing-hours-title = El gas a lo largo del día
# of 3869536d, reviewed: false
drawing-hours-gas = Gas [m³ por hora]
# of 40bd5833, reviewed: false
drawing-hours-stored = En el depósito al final de la hora [m³]
# of 2b0ef45d, reviewed: false
drawing-hours-key =
    Rayado: gas que se quiere en cada hora; en negro la parte que no hay. Línea: gas que se produce. Abajo: gas en el depósito.
# of 36ca2002, reviewed: false
drawing-hours-wanted-and-made = Se quiere { $wanted }, se produce { $made }.
# of 86faa363, reviewed: false
drawing-hours-gas-runs-out = El gas se acaba: { $spells }.
# of 40f4bf12, reviewed: false
drawing-hours-spell = { $start } a { $end }
# of d63464b6, reviewed: false
drawing-hours-gas-lasts = Con caudales típicos el gas no se acaba.
# of d1627b4d, reviewed: false
drawing-charge-title = Gas de una carga
# of 0936ab5c, reviewed: false
drawing-charge-gas = Gas [m³ al día]
# of a9c1af89, reviewed: false
drawing-charge-gas-so-far = Gas hasta ahora [m³]
# of fe7280cb, reviewed: false
drawing-charge-recharge = recarga
# of e980c8c8, reviewed: false
drawing-charge-key =
    Líneas: lo típico. Rayado: el rango en que están nueve de diez muestras. Guiones: gas que arde; el resto se deja salir. Puntos: el día de recargar.
# of 095bcad8, reviewed: false
drawing-charge-gives = Una carga da { $gas } de gas en { $retention }.
# of 5b52aa5d, reviewed: false
drawing-charge-gives-nothing = Una carga no da gas con el que se pueda contar.
# of d5b0d618, reviewed: false
drawing-charge-in-turn =
    { $digesters ->
        [one] Un biodigestor: se recarga cada { $every }.
       *[other] { $digesters } biodigestores por turno: se recarga uno cada { $every }.
    }
# of e8faee72, reviewed: false
drawing-heap-title = Lo juntado frente a lo necesario
# of 378fa15b, reviewed: false
drawing-heap-about = Montones en kilogramos por día hasta el llenado, frente a lo que necesita la carga.
# of 55d1258c, reviewed: false
drawing-heap-key =
    Línea gruesa: lo que hay en el montón. Guiones: lo que necesita la carga, rayado su rango. La barra al final: rango del montón el día del llenado.
# of 12edfaa4, reviewed: false
drawing-heap-filling-day = día del llenado: { $mass }
# of f4dca48a, reviewed: false
drawing-heap-filling-on = llenado, { $date }: { $mass }
# of d2639014, reviewed: false
drawing-heap-needed = se necesita { $mass }
# of f4201186, reviewed: false
drawing-section-dome = Cúpula fija con su tanque
# of aeaf9908, reviewed: false
drawing-section-drum = Campana flotante
# of 9a409895, reviewed: false
drawing-section-bag = Bolsa, a lo largo y de través
# of 4a103f5f, reviewed: false
drawing-section-cylinder = Cilindro
# of c6bb1948, reviewed: false
drawing-section-title = { $shape }, { $volume }
# of bf28ef64, reviewed: false
drawing-section-about = Corte a escala.
# of 6cd30352, reviewed: false
drawing-section-no-structural-design = Dibujo de planificación a escala. No es un diseño estructural: no construya con él.
# of ff31866a, reviewed: false
drawing-section-dome-dashed = Guiones: pasos de entrada y salida (sin dimensionar), y ambos niveles con el depósito de gas lleno.
# of 85f52f89, reviewed: false
drawing-section-drum-dashed = La campana está dibujada llena de gas. Guiones: su faldón dentro de la mezcla (sin dimensionar).
# of 736ae709, reviewed: false
drawing-section-bag-film = Perímetro de la lámina { $length }.
# of 3bf5f375, reviewed: false
drawing-section-person = La figura mide { $height } y está solo como escala.
# of 3f2f7e00, reviewed: false
drawing-section-scale = { $length }; todas las longitudes en metros
# of aed7c516, reviewed: false
drawing-section-slurry = mezcla
# of 2fe840e1, reviewed: false
drawing-section-gas = gas
# of 266bfd2c, reviewed: false
drawing-section-measure = { $name }: { $measure }
# of 50ce3004, reviewed: false
drawing-section-total-volume = Volumen interior total
# of ac5b36b6, reviewed: false
drawing-section-working-volume = Mezcla
# of d2e95aba, reviewed: false
drawing-section-gas-storage-volume = Depósito de gas
# of 24d19d7b, reviewed: false
drawing-section-inner-diameter = Diámetro interior
# of 18eda86c, reviewed: false
drawing-section-inner-height = Altura interior
# of 5383886c, reviewed: false
drawing-section-slurry-depth = Profundidad de la mezcla
# of d57074c1, reviewed: false
drawing-section-slurry-depth-at-rest = Profundidad de la mezcla en reposo
# of 7480264a, reviewed: false
drawing-section-gas-space-height-at-rest = Altura del espacio de gas en reposo
# of 3c6736ae, reviewed: false
drawing-section-compensation-tank-diameter = Diámetro del tanque de compensación
# of 296cdbcc, reviewed: false
drawing-section-compensation-tank-depth = Profundidad del tanque de compensación
# of 1b18d34c, reviewed: false
drawing-section-pit-diameter = Diámetro de la fosa
# of 72cae512, reviewed: false
drawing-section-drum-diameter = Diámetro de la campana
# of f6d41a31, reviewed: false
drawing-section-gas-height-in-full-drum = Altura del gas con la campana llena
# of adc95605, reviewed: false
drawing-section-length = Largo
# of 54a71934, reviewed: false
drawing-section-diameter = Diámetro
# of bfe2eca4, reviewed: false
drawing-section-height = Altura
# of 6b3c1232, reviewed: false
drawing-buckets-title = Lo que entra en una alimentación
# of 4d76e675, reviewed: false
drawing-year-title = El gas a lo largo del año
