# of b86e8f9a, reviewed: false
problem-malformed-json-title = El cuerpo no es JSON
# of 6b0ff74a, reviewed: false
problem-malformed-json-about = El cuerpo no se pudo leer como un solo documento JSON en UTF-8, nombra dos veces un miembro o está anidado con demasiada profundidad. NaN no es JSON.
# of feb7cda3, reviewed: false
problem-malformed-json-remedy = Envíe un solo objeto JSON. El detalle dice en qué línea y columna se detuvo la lectura.
# of d35fe977, reviewed: false
problem-bad-request-title = La solicitud no se puede leer
# of b0f5bb3e, reviewed: false
problem-bad-request-about = Una parte de la solicitud distinta de su cuerpo no cumple las reglas de HTTP.
# of 16c7d817, reviewed: false
problem-bad-request-remedy = Revise la dirección y los encabezados.
# of 3d1b4839, reviewed: false
problem-not-found-title = No hay nada en esta dirección
# of 2ba7c49d, reviewed: false
problem-not-found-about = Ninguna operación y ninguna entrada del libro de reglas tiene esta dirección.
# of 57f69393, reviewed: false
problem-not-found-remedy = GET / lista las direcciones; el id de una entrada está en su colección, y los nombres parecidos están en errors.
# of f8cf4396, reviewed: false
problem-method-not-allowed-title = Esta dirección no admite este método
# of 5e471c2f, reviewed: false
problem-method-not-allowed-about = La dirección existe, pero responde a otros métodos.
# of a181dc9f, reviewed: false
problem-method-not-allowed-remedy = Use un método de los que lista el encabezado Allow.
# of 185c943c, reviewed: false
problem-not-acceptable-title = Ninguna representación cumple el encabezado Accept
# of f4ef8c9b, reviewed: false
problem-not-acceptable-about = La dirección no ofrece ninguno de los tipos de medio que admite el encabezado Accept.
# of 5601bfcc, reviewed: false
problem-not-acceptable-remedy = Quite el encabezado Accept o admita el tipo de medio que nombra el detalle.
# of 60641082, reviewed: false
problem-too-large-title = El cuerpo es demasiado grande
# of 66f35e78, reviewed: false
problem-too-large-about = El cuerpo tiene más bytes de los que acepta el servicio.
# of f6542635, reviewed: false
problem-too-large-remedy = Pregunte por una finca a la vez y omita lo que no hace falta.
# of f9dcf530, reviewed: false
problem-unsupported-media-type-about = Falta el encabezado Content-Type o nombra otro tipo u otro juego de caracteres que UTF-8, o el cuerpo está comprimido.
# of 4d17e9b3, reviewed: false
problem-invalid-request-title = La solicitud no se puede responder tal como está
# of 08a167c2, reviewed: false
problem-invalid-request-about = El cuerpo es JSON, pero hay miembros que faltan, son desconocidos o están fuera de su sentido; o lo está un parámetro de consulta. Se listan todas las faltas.
# of 78dda1e6, reviewed: false
problem-invalid-request-remedy = Recorra errors: cada una señala su lugar (un JSON Pointer o el nombre del parámetro de consulta) y dice qué se esperaba.
# of 836c1a55, reviewed: false
problem-internal-error-title = El servicio falló
# of 5a725f49, reviewed: false
problem-internal-error-about = La falla es nuestra y quedó registrada con el id de la solicitud.
# of 0bd21e75, reviewed: false
problem-internal-error-remedy = Comunique el valor instance de la respuesta a quien opera el servicio.
# of c516be78, reviewed: false
problem-not-ready-title = El servicio no está listo
# of 67d97434, reviewed: false
problem-not-ready-about = El servicio no logra recalcular sus propios ejemplos y no se le debe preguntar.
# of a20267bf, reviewed: false
problem-not-ready-remedy = Inténtelo más tarde; quien opera el servicio encuentra la razón en su registro.
# of 0e223368, reviewed: false
problem-overloaded-title = Esperan demasiadas solicitudes
# of 935580a6, reviewed: false
problem-overloaded-about = Ya esperan tantas solicitudes como acepta el servicio. Las preguntas de cálculo largo esperan en una fila aparte.
# of bcc2647b, reviewed: false
problem-overloaded-remedy = Envíe la solicitud de nuevo después de tantos segundos como dice el encabezado Retry-After.
# of 800061a2, reviewed: false
detail-no_address = Ninguna operación y ninguna página tiene esta dirección.
# of a181dc9f, reviewed: false
detail-use_allowed_method = Use un método de los que lista el encabezado Allow.
# of 7cd9e30e, reviewed: false
detail-body_too_large = El cuerpo es más grande de lo que acepta el servicio.
# of 01094191, reviewed: false
detail-failed = El servicio falló; la falla es nuestra y quedó registrada.
# of d2b032d4, reviewed: false
detail-no_problem_kind = Ningún tipo de problema tiene este nombre.
# of 97c02a24, reviewed: false
detail-examples_fail = El servicio no logra recalcular sus ejemplos de { $names }.
# of a0123967, reviewed: false
detail-lane_full = Ya esperan tantas solicitudes como acepta el servicio.
# of 739fdff5, reviewed: false
detail-caller_left = Quien llamaba se fue mientras su solicitud esperaba.
# of f68bf054, reviewed: false
detail-no_entry = La colección no tiene ninguna entrada con este id.
# of e8810cfa, reviewed: false
detail-no_entry_of_collection = no es una entrada de esta colección
# of 74271cfc, reviewed: false
detail-accept_must_admit = El encabezado Accept debe admitir uno de: { $types }.
# of 8ccd4f97, reviewed: false
detail-query_does_not_fit = La consulta no corresponde a esta dirección.
# of 1823029d, reviewed: false
detail-content_type_json = Content-Type debe ser application/json.
# of 5ef579b2, reviewed: false
detail-not_compressed = El cuerpo no debe estar comprimido.
# of daeea567, reviewed: false
detail-no_parameter = aquí no hay tal parámetro de consulta
# of 17328cca, reviewed: false
detail-given_twice = dado más de una vez
# of 5a0d809d, reviewed: false
detail-most_parameters = como máximo { $most } parámetros de consulta
# of ed50d401, reviewed: false
detail-yes_or_no = true o false
# of 0050abae, reviewed: false
detail-faults = { $count ->
    [one] { $count } falta en el cuerpo.
   *[other] { $count } faltas en el cuerpo.
}
# of e6975aa3, reviewed: false
detail-faults_first = { $faults } Se listan las primeras { $most }.
# of bfe008f8, reviewed: false
detail-body_repeats_member = El cuerpo nombra dos veces un miembro.
# of 4a9363bf, reviewed: false
detail-body_too_deep = El cuerpo está anidado con demasiada profundidad.
# of 60f70692, reviewed: false
detail-body_not_json = El cuerpo no es un solo documento JSON.
# of 8687ce4f, reviewed: false
detail-body_repeats_member_at = El cuerpo nombra dos veces un miembro (línea { $line }, columna { $column }).
# of 4069ade0, reviewed: false
detail-body_too_deep_at = El cuerpo está anidado con demasiada profundidad (línea { $line }, columna { $column }).
# of 357f9a4a, reviewed: false
detail-body_not_json_at = El cuerpo no es un solo documento JSON (línea { $line }, columna { $column }).
# of c4bc02ad, reviewed: false
problem-page-status = Estado { $status }
# of f47f1edc, reviewed: false
problem-page-what_to_do = Qué hacer
# of bf586a64, reviewed: false
problem-request-stalled-title = La solicitud se quedó detenida
# of da37e42d, reviewed: false
problem-request-stalled-about = El cuerpo dejó de llegar, o llegó más despacio de lo que espera el servicio.
# of 2801167a, reviewed: false
problem-request-stalled-remedy = Envíe la solicitud de nuevo por una conexión más estable.
# of 19bb2581, reviewed: false
problem-no-room-title = El servicio no tiene espacio para la tabla
# of f0f51364, reviewed: false
problem-no-room-about = La carpeta donde se guardan las tablas mientras se procesan está llena o no se puede escribir en ella.
# of bf1824bc, reviewed: false
problem-no-room-remedy = Envíe una tabla más pequeña, o la misma más tarde; quien opera el servicio puede darle más espacio.
# of 59c58373, reviewed: false
problem-unsupported-media-type-title = El cuerpo no es de un tipo que se acepte aquí
# of e8ace79a, reviewed: false
problem-unsupported-media-type-remedy = Envíe Content-Type: application/json, o para una tabla el tipo que nombra el detalle, y el cuerpo tal como es.
