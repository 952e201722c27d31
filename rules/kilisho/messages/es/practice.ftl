# of 71244562, reviewed: false
practice-containers-bucket-name = Balde de 20 litros
# of 5e283b5b, reviewed: false
practice-containers-small_bucket-name = Balde de 10 litros
# of c24cff0a, reviewed: false
practice-containers-jerrycan-name = Bidón
# of 608dbb26, reviewed: false
practice-containers-basket-name = Canasta que se lleva en la cabeza
# of 976ccd9c, reviewed: false
practice-containers-wheelbarrow-name = Carretilla
# of 8e193256, reviewed: false
practice-containers-drum-name = Tambor de aceite
# of e63a774a, reviewed: false
practice-containers-hand_cart-name = Carretón de mano
# of 54c1c88f, reviewed: false
practice-containers-donkey_panniers-name = Par de alforjas o canastos de burro
# of 283cddc3, reviewed: false
practice-containers-ox_cart-name = Carreta de bueyes
# of 5afd8218, reviewed: false
practice-containers-pickup-name = Camioneta (pickup) con la caja llena al ras
# of 974e01cc, reviewed: false
practice-covers-uncovered-name = Montón al descubierto
# of 5dfffbe4, reviewed: false
practice-covers-roof-name = Bajo techo
# of dcc04afd, reviewed: false
practice-covers-sheet-name = Compacto, a la sombra y bajo una lona o plástico
# of 2a077780, reviewed: false
practice-covers-pit-name = Fosa tapada
# of 68d995df, reviewed: false
practice-slurry_stores-open_pit-name = Fosa o tanque abierto
# of bd45232c, reviewed: false
practice-slurry_stores-covered_pit-name = Fosa o tanque con tapa, lona o costra gruesa
# of dd884a92, reviewed: false
practice-spreadings-broadcast-name = Vertido o lanzado sobre la superficie
# of 3a9b3a81, reviewed: false
practice-spreadings-covered_furrow-name = Vertido en surcos u hoyos y cubierto con tierra de inmediato
# of 266d356d, reviewed: false
practice-spreadings-irrigation_water-name = Llevado por surcos con el agua de riego
# of 76e87253, reviewed: false
practice-manure_managements-solid_storage-name = Montón de estiércol sólido, guardado por meses
# of a397391d, reviewed: false
practice-manure_managements-dry_lot-name = Se deja en un corral de tierra y se saca de vez en cuando
# of dd5fdee4, reviewed: false
practice-manure_managements-daily_spread-name = Llevado al campo en menos de un día
# of 82d117b6, reviewed: false
practice-manure_managements-pasture-name = Queda donde pastan los animales
# of 0a36c8fa, reviewed: false
practice-manure_managements-burned_as_fuel-name = Secado y quemado
# of 4df57d2a, reviewed: false
practice-manure_managements-deep_bedding-name = Pisado en una cama que queda más de un mes
# of c4b57d7e, reviewed: false
practice-manure_managements-liquid_slurry-name = Purín en una fosa o un tanque que se vacía dos veces al año
# of 89a1f42a, reviewed: false
practice-manure_managements-pit_storage-name = Purín en una fosa debajo de los animales que se vacía cada mes
# of 3c500efd, reviewed: false
practice-measurements-phosphorus-text = Un laboratorio de suelos o de alimentos para animales mide el fósforo de una muestra seca; pregunte si informa P o P2O5.
# of 0dfc0597, reviewed: false
practice-measurements-potassium-text = Un laboratorio de suelos o de alimentos para animales mide el potasio de una muestra seca; pregunte si informa K o K2O.
# of cde72637, reviewed: false
practice-measurements-nitrogen_need-text = Pregunte a la oficina de extensión o a un laboratorio de suelos cuánto nitrógeno necesita aquí este cultivo con el rendimiento que usted obtiene, e indíquelo.
# of 3fb6744f, reviewed: false
practice-measurements-total_solids-text = Pese unos 200 g del material fresco, séquelo en capas delgadas en un horno a unos 105 °C (o durante varios días de sol) hasta que no pierda más peso, y pese de nuevo; la parte que queda son los sólidos totales. Tres muestras de días distintos.
# of 50869e23, reviewed: false
practice-measurements-volatile_solids_share-text = Un laboratorio quema una muestra seca a 550 °C: lo que se quema es volátil. Si no hay laboratorio, busque tierra y arena en el estiércol, que bajan esa parte.
# of 1e831f39, reviewed: false
practice-measurements-bulk_density-text = Pese un balde vacío, lleno de agua y lleno del material tal como se lleva; el material dividido entre el agua, ambos sin el balde, es su densidad en kilogramos por litro.
# of 56562efd, reviewed: false
practice-measurements-dung_per_day-text = Recoja y pese todo el estiércol de los animales durante un día y una noche completos, en tres días, y divida entre el número de cabezas.
# of 56562efd, reviewed: false
practice-measurements-dung_per_live_weight-text = Recoja y pese todo el estiércol de los animales durante un día y una noche completos, en tres días, y divida entre el número de cabezas.
# of 4563bb09, reviewed: false
practice-measurements-collectable_share_stall-text = Pese lo que de verdad se recoge en un día y no lo que cae.
# of bf902f20, reviewed: false
practice-measurements-collectable_share_night_pen-text = Pese lo que hay en el corral cada mañana durante tres días.
# of 7b531432, reviewed: false
practice-measurements-collectable_share_grazing-text = Pese lo que de verdad se trae a casa en un día.
# of c5d7da05, reviewed: false
practice-measurements-urine_per_day-text = Mida lo que corre a la fosa de orina en un día, en tres días sin lluvia.
# of dd9160bd, reviewed: false
practice-measurements-fill_share-text = Tome del plano del constructor el volumen de mezcla al nivel normal, o mida el nivel y las dimensiones interiores antes de llenar, desde fuera y nunca entrando en un biodigestor usado.
# of e288a8c1, reviewed: false
practice-measurements-gas_storage_share-text = Tome del plano del constructor el volumen de almacenamiento; en una cúpula es el tanque de compensación entre el nivel más bajo y el del rebosadero.
# of 10a8b201, reviewed: false
practice-measurements-digester_temperature-text = Cuelgue un termómetro en mezcla recién sacada de la salida, cada semana durante la época fría y la cálida.
# of e3c8c16e, reviewed: false
practice-measurements-soil_offset-text = Mida la temperatura de la mezcla en la salida, cada semana durante la época fría y la cálida.
# of be8d4d3c, reviewed: false
practice-measurements-yearly_swing-text = Pida a la estación meteorológica más cercana los doce promedios mensuales de la temperatura del aire.
# of 60c8c09b, reviewed: false
practice-measurements-soil_depth-text = Tome la profundidad del centro de la mezcla bajo el suelo del plano o con una varilla de medir en la salida; indíquela como la profundidad del biodigestor.
# of 54e956c0, reviewed: false
practice-measurements-biogas_yield-text = Haga que se realice una prueba por lotes, o lea un medidor de gas todos los días durante un mes de alimentación pareja y divida entre los sólidos volátiles alimentados.
# of 12ab9a6d, reviewed: false
practice-measurements-methane_share-text = Haga que una persona capacitada mida el gas con un analizador portátil, al aire libre, en el quemador.
# of a4c82ce0, reviewed: false
practice-measurements-nitrogen_share-text = Un laboratorio de suelos o de alimentos para animales mide el nitrógeno total de una muestra seca.
# of 4c8c60db, reviewed: false
practice-measurements-ammonium_share-text = Un laboratorio mide el amonio y el nitrógeno total del digestato fresco.
# of 15313d7f, reviewed: false
practice-measurements-carbon_to_nitrogen_of_feed-text = Un laboratorio de suelos o de alimentos para animales mide el carbono y el nitrógeno de una muestra seca.
# of 124c2e50, reviewed: false
practice-measurements-slurry_ph-text = Meta papel de pH o un medidor en mezcla fresca de la salida, de inmediato después de sacarla.
# of 27d4fc95, reviewed: false
practice-measurements-settling_share-text = Deje reposar un balde de alimentación mezclada un cuarto de hora, viértalo, seque y pese la arena, y compare con la ceniza del material.
# of ed7cc696, reviewed: false
practice-measurements-gas_per_hour-text = Lea un medidor de gas antes y después de una hora de uso sin nada más encendido, en tres días; sin medidor, observe cuánto baja una campana en esa hora.
# of be4e6038, reviewed: false
practice-measurements-gas_per_person-text = Lea un medidor de gas, o cuente las horas de cada quemador, durante una semana de cocina habitual, y divida entre las personas y los días.
# of 5d84f3c6, reviewed: false
practice-measurements-biogas_stove_efficiency-text = Pese una olla de agua y caliéntela 50 K con gas medido: 4.19 kJ por kilogramo y kelvin, dividido entre el calor del gas.
# of 9a29e7f2, reviewed: false
practice-measurements-fuel_stove_efficiency-text = Pese el combustible que la familia quema en una semana de cocina habitual antes de que haya gas; eso es mejor que cualquier eficiencia.
# of ebd62497, reviewed: false
practice-measurements-leak_share-text = Cierre la válvula al anochecer y lea la presión por la mañana a la misma temperatura; el agua jabonosa en cada unión muestra por dónde se va.
# of d2e21774, reviewed: false
practice-measurements-walking_speed-text = Tome el tiempo de un viaje de ida y vuelta con carga desde el montón hasta el biodigestor.
# of fba548c5, reviewed: false
practice-measurements-mixing_rate-text = Tome el tiempo de la mezcla de los primeros diez baldes.
