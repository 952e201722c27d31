# of 4ffce4f8, reviewed: false
values-agree = Los valores indicados concuerdan entre sí
# of 86e199f9, reviewed: false
values-agree-why = Se deduce de { $inputs }, que dicen otra cosa; se usó el valor indicado.
# of 169e6a56, reviewed: false
values-agree-do = Mida de nuevo y fíjese en la unidad: litros en lugar de metros cúbicos es el error habitual.
# of cd7223e4, reviewed: false
safety-stop = Deténgase. No se cumple: { $titles }.
# of 81f4652a, reviewed: false
safety-act-at-once = Actúe de inmediato. No se cumple: { $titles }.
# of 86a0af94, reviewed: false
safety-more-unanswered = { $count ->
    [one] { $count } control más de nivel de peligro no tiene respuesta.
   *[other] { $count } controles más de nivel de peligro no tienen respuesta.
}
# of afe94683, reviewed: false
safety-unanswered = { $count ->
    [one] { $count } control de nivel de peligro no tiene respuesta, así que no se puede decir que sea seguro.
   *[other] { $count } controles de nivel de peligro no tienen respuesta, así que no se puede decir que sea seguro.
}
# of ca9d4fa1, reviewed: false
safety-lesser-failed = { $count ->
    [one] { $count } control menor no se cumplió.
   *[other] { $count } controles menores no se cumplieron.
}
# of ae73d23e, reviewed: false
safety-failed = { $count ->
    [one] { $count } control no se cumplió, y no es de nivel de peligro.
   *[other] { $count } controles no se cumplieron, ninguno de nivel de peligro.
}
# of 4d56dfa7, reviewed: false
safety-clear = Ningún control dejó de cumplirse con lo que se indicó.
# of 7aa38b21, reviewed: false
safety-statement = Un veredicto limpio significa que ningún control dejó de cumplirse con lo que se indicó, no que la planta sea segura: deciden los reglamentos locales y los profesionales autorizados.
