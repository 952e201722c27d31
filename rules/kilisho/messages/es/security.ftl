# of f881ab2c, reviewed: false
problem-unauthorized-title = Hace falta una clave
# of e4d49c23, reviewed: false
problem-unauthorized-about = Este servicio responde a quienes muestran una de sus claves de API. La solicitud no mostró ninguna, o una que el servicio no conoce.
# of e318ffc1, reviewed: false
problem-unauthorized-remedy = Envíe la clave como Authorization: Bearer KEY. Quien opera el servicio entrega las claves.
# of 802600d1, reviewed: false
problem-too-many-requests-title = Demasiadas solicitudes
# of 088da87a, reviewed: false
problem-too-many-requests-about = Quien llama ha enviado más solicitudes de las que el servicio responde en este tiempo.
# of bcc2647b, reviewed: false
problem-too-many-requests-remedy = Envíe la solicitud de nuevo después de tantos segundos como dice el encabezado Retry-After.
# of 8392c7e1, reviewed: false
problem-took-too-long-title = La respuesta tardó demasiado
# of ca127cdb, reviewed: false
problem-took-too-long-about = Calcular la respuesta tardó más de lo que permite el servicio, así que se abandonó.
# of c382b715, reviewed: false
problem-took-too-long-remedy = Pida menos, por ejemplo un pronóstico más corto o menos sustratos. Repetir la misma solicitud solo ayuda si el servicio estaba ocupado.
# of 8212229f, reviewed: false
detail-no_key = La solicitud no muestra ninguna clave.
# of 0e23abc6, reviewed: false
detail-key_not_known = El encabezado Authorization no contiene ninguna clave que el servicio conozca.
# of b99b943c, reviewed: false
detail-asks_too_often = Quien llama pregunta más a menudo de lo que el servicio responde.
# of f02a8039, reviewed: false
detail-took_too_long = La respuesta se abandonó porque tardó demasiado.
