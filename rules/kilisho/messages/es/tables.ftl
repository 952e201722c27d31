# of d185b603, reviewed: false
detail-table_content_type = Content-Type debe ser uno de: { $types }; el texto, en UTF-8.
# of 2c3d9263, reviewed: false
detail-table_too_large = La tabla tiene más de { $most } bytes.
# of f011db6a, reviewed: false
detail-table_too_long = La tabla tiene más de { $most } filas.
# of 1e4abb85, reviewed: false
detail-table_stalled = El resto de la tabla no llegó.
# of 5c15b544, reviewed: false
detail-table_no_room = No queda espacio para esta tabla.
# of 2b6f9ba8, reviewed: false
detail-table_lane_full = Ya se están procesando tantas tablas como acepta el servicio.
# of f786ef5f, reviewed: false
detail-table_took_too_long = Calcular una parte de la tabla tardó demasiado.
# of 95055704, reviewed: false
fault-table_empty = la tabla no tiene ninguna fila
# of 2db39c9a, reviewed: false
fault-table_not_ndjson = ninguna línea es un objeto JSON
# of e4b5b11e, reviewed: false
fault-table_not_csv = la primera línea no es un encabezado de CSV en UTF-8
# of 1a3e9ae3, reviewed: false
fault-table_not_arrow = no es un flujo Arrow, o está cortado
# of be6cabb7, reviewed: false
fault-table_not_parquet = no es un archivo Parquet, o está cortado
# of d18a1788, reviewed: false
fault-table_broken = lo que contiene el archivo no es lo que dice de sí mismo
# of a9a80a2e, reviewed: false
fault-table_explodes = una parte del archivo se vuelve demasiado grande al descomprimirla; escríbalo con lotes, grupos de filas o páginas más pequeños
# of b056a2a9, reviewed: false
fault-table_encoding = una columna está codificada como DELTA_BYTE_ARRAY; escríbala simple (plain) o con un diccionario
# of 6ee00dab, reviewed: false
fault-no_column = ninguna columna tiene el nombre de un miembro del registro de una instalación ni el de un hecho; el encabezado que se leyó empieza por { $names }
# of 10807d48, reviewed: false
fault-required_column = ninguna columna se llama así
# of a903268c, reviewed: false
fault-unread_column = ninguna columna se lee con este nombre
# of 931fa63e, reviewed: false
fault-column_twice = dos columnas contienen este miembro
# of 9b3d41bd, reviewed: false
fault-column_type = un tipo que esta columna no puede tener
# of 0e30c81e, reviewed: false
fault-unit_of_column = la unidad entre corchetes o paréntesis debe ser una de: { $units }
# of c23e6769, reviewed: false
fault-column_without_unit = esta columna no lleva unidad
# of f0de6502, reviewed: false
fault-at_line = línea { $line }: { $fault }
# of 99de5fef, reviewed: false
fault-nearest = { $fault } (lo más parecido: { $nearest })
# of d391b501, reviewed: false
fault-cell_unreadable = no es un valor que esta columna admita
# of c42be6dc, reviewed: false
fault-cell_number_in_unit = un número en { $unit }; los decimales van tras un punto; deje la celda vacía si no se conoce
# of 6958babc, reviewed: false
fault-cell_number = un número; los decimales van tras un punto; deje la celda vacía si no se conoce
# of 3c0c0490, reviewed: false
fault-cell_whole_number = un número entero; deje la celda vacía si no se conoce
# of 6d5fb74d, reviewed: false
fault-row_denied = contradice lo que se deduce del resto de la fila; omítalo o haga que concuerden
# of ccd798ba, reviewed: false
fault-row_not_an_object = una fila es un objeto con las columnas como miembros
# of 34f26214, reviewed: false
fault-row_too_long = la fila es demasiado larga
# of 652b19f7, reviewed: false
fault-row_not_json = no es un objeto JSON en una sola línea
# of 36f52d40, reviewed: false
fault-row_repeats_member = nombra dos veces un miembro
# of eb85fdfa, reviewed: false
fault-row_too_deep = está anidada con demasiada profundidad
# of 8f8d25ff, reviewed: false
fault-row_not_utf8 = no es texto en UTF-8
# of 6ffe5bb8, reviewed: false
fault-row_not_csv = hay una comilla donde no puede haberla, o nada la cierra
# of 26915220, reviewed: false
fault-row_width = tiene { $cells } celdas donde el encabezado tiene { $columns }
# of 8f8d25ff, reviewed: false
fault-cell_not_utf8 = no es texto en UTF-8
