# of 3050d5d9, reviewed: false
heap-gathered = { $days ->
    [one] { $name }: { $days } día aporta { $brought }, de los que quedan { $left } al llenar.
   *[other] { $name }: { $days } días aportan { $brought }, de los que quedan { $left } al llenar.
}
# of 2b8e4856, reviewed: false
heap-added = { $days ->
    [one] { $name }: ya había { $there } y { $days } día aporta { $brought }, de los que quedan { $left } al llenar.
   *[other] { $name }: ya había { $there } y { $days } días aportan { $brought }, de los que quedan { $left } al llenar.
}
# of 87e1e527, reviewed: false
heap-needed = La carga necesita { $needed }.
# of bf0dcb04, reviewed: false
heap-short = Faltan { $short }.
# of b1d64ed2, reviewed: false
stockpile-enough = Eso alcanza.
# of c6db9583, reviewed: false
stockpile-never = Con la recolección propia sola nunca alcanza.
# of 9e4febea, reviewed: false
stockpile-enough-on = { $days ->
    [one] La recolección propia alcanza al cabo de { $days } día, el { $date }.
   *[other] La recolección propia alcanza al cabo de { $days } días, el { $date }.
}
# of a8b111d4, reviewed: false
stockpile-too-old = { $days ->
    [one] Para entonces el estiércol más viejo tiene { $days } día, más que los { $keeps } que se conserva con esta cubierta.
   *[other] Para entonces el estiércol más viejo tiene { $days } días, más que los { $keeps } que se conserva con esta cubierta.
}
# of 87f10549, reviewed: false
assumed-cover = Nadie dijo que el montón esté cubierto.
# of 91c3ef9f, reviewed: false
remedy-purchase = Tome { $bought } de otros.
# of d1631aa6, reviewed: false
remedy-never = Con la recolección propia nunca alcanza.
# of 90c2e415, reviewed: false
remedy-wait = { $days ->
    [one] Espere hasta reunir { $days } día de estiércol propio; con esta cubierta el estiércol se conserva { $keeps }.
   *[other] Espere hasta reunir { $days } días de estiércol propio; con esta cubierta el estiércol se conserva { $keeps }.
}
# of 4c1ff892, reviewed: false
remedy-starter = Reemplace lo que falta con digestato de un biodigestor en marcha cuyos animales estén sanos.
# of e53da417, reviewed: false
remedy-smaller-fill = Llene hasta { $share } del volumen total y agregue el resto a medida que llegue el estiércol; la entrada y la salida deben quedar bajo la mezcla (por lo general desde { $least }).
# of 28f54969, reviewed: false
labour-hauling = { $mass } vienen de otra parte. Su transporte hasta la finca no está contado en estas horas: prevea para ello una carreta o un vehículo.
# of 18692639, reviewed: false
fill = Llene de una sola vez: mezcle con agua sin dejar grumos; no deje entrar arena, piedras ni paja larga.
# of 863436c9, reviewed: false
fill-refused = No llene. No se cumple: { $names }.
# of bbc9073e, reviewed: false
fill-when-there = Llene solo cuando tenga la parte que falta.
# of 25815919, reviewed: false
fill-once-confirmed = Una vez confirmado lo siguiente: { $names }. { $fill }
# of 387b1389, reviewed: false
start-up-close = Cierre la salida de gas solo después de que el aire haya sido expulsado hasta donde lo permita el llenado; mantenga toda llama lejos de la planta.
# of dca7f451, reviewed: false
start-up-vent = { $cycles ->
    [one] Deje salir el primer gas al aire libre, sin quemarlo y hasta que no quede presión, una vez que se haya llenado el espacio de gas.
   *[other] Deje salir el primer gas al aire libre, sin quemarlo y hasta que no quede presión, cada vez que se haya llenado el espacio de gas, { $cycles } veces en total.
}
# of c7f330f8, reviewed: false
start-up-flame = Solo entonces pruebe la llama: al aire libre, en el aparato al final de su tubería, nunca en la cúpula, la tapa ni la salida.
# of 4fb52b19, reviewed: false
start-up-again = Si no arde de forma pareja con llama azul, ventee otra vez, espere uno o dos días y pruebe de nuevo; no alimente.
# of e504801b, reviewed: false
start-up-feed = Cuando arda de forma pareja durante tres días, comience la alimentación de mantenimiento con la cuarta parte de la cantidad completa.
# of 75e16dfa, reviewed: false
start-up-sours = Una carga así se vuelve ácida con facilidad: cargue solo con estiércol fresco de vaca o de búfalo, con digestato de un biodigestor en marcha donde se pueda conseguir, y agregue lo demás cuando arda.
# of 634ab5d1, reviewed: false
start-up-latrine = Nada de la letrina es parte de la carga: conéctela una vez que el gas arda, para que descargue directamente en el biodigestor y nadie manipule lo que trae.
# of e0480309, reviewed: false
schedule-confirm = Confirme el curado, la estanqueidad al agua y la estanqueidad al gas; no llene antes.
# of 5ce5191a, reviewed: false
schedule-collect = Comience a juntar estiércol limpio bajo cubierta.
# of 4c08ca58, reviewed: false
schedule-purchases = Tenga todo lo comprado ya traído y cubierto junto al biodigestor.
# of 9ab20bab, reviewed: false
schedule-first-gas = Desde ahora se forma gas, mezclado con aire: déjelo salir al aire libre, sin quemarlo, y mantenga lejos toda llama.
# of 4d8c33cf, reviewed: false
schedule-flame = Pruebe la llama al aire libre en el aparato, después de ventear.
# of 63f0102b, reviewed: false
schedule-flame-unsure = Pruebe la llama al aire libre en el aparato, después de ventear; no cuente con ella sin digestato de un biodigestor en marcha.
# of 9db4993b, reviewed: false
schedule-flame-sours = Pruebe la llama al aire libre en el aparato, después de ventear; no cuente con ella, porque una carga así se vuelve ácida con facilidad.
# of 45aa9973, reviewed: false
schedule-feed = Cuando arda de forma pareja durante tres días: alimente cada día con { $share } de la cantidad completa.
