# Tables of installations: kinds of problem, what is wrong with a file, and what is wrong with a row.
problem-request-stalled-title = The request came to a halt
problem-request-stalled-about = The body stopped coming, or came more slowly than the service waits for.
problem-request-stalled-remedy = Send the request again over a steadier connection.
problem-no-room-title = The service has no room for the table
problem-no-room-about = The folder in which tables are kept while they are worked on is full or cannot be written.
problem-no-room-remedy = Send a smaller table, or the same one later; whoever runs the service can give it more room.

## What is wrong this time
# $types are media types.
detail-table_content_type = Content-Type must be one of: { $types }; text in UTF-8.
# $most is a number of bytes.
detail-table_too_large = The table has more than { $most } bytes.
# $most is a number of rows.
detail-table_too_long = The table has more than { $most } rows.
detail-table_stalled = The rest of the table did not come.
detail-table_no_room = There is no room left for this table.
detail-table_lane_full = As many tables as the service takes are worked on already.
detail-table_took_too_long = A piece of the table took too long to be worked out.

## A file as a whole
fault-table_empty = the table has no row
fault-table_not_ndjson = no line is a JSON object
fault-table_not_csv = the first line is no header of CSV in UTF-8
fault-table_not_arrow = not an Arrow stream, or one that is cut off
fault-table_not_parquet = not a Parquet file, or one that is cut off
fault-table_broken = what the file holds is not what it says of itself
fault-table_explodes = a part of the file becomes too large when unpacked; write it with smaller batches, row groups or pages
fault-table_encoding = a column is encoded as DELTA_BYTE_ARRAY; write it plain or with a dictionary
# $names are the first names of columns, in quotes.
fault-no_column = no column has the name of a member of an installation's record or of a fact; the header that was read begins with { $names }
fault-required_column = no column is called that
fault-unread_column = no column is read by this name
fault-column_twice = two columns hold this member
fault-column_type = a type that this column cannot have
# $units are unit codes.
fault-unit_of_column = the unit in brackets must be one of: { $units }
fault-column_without_unit = this column has no unit

## A row
# $line is the number of a line of a text, $fault what is wrong with the row that begins there.
fault-at_line = line { $line }: { $fault }
# $fault is what is wrong, $nearest are words that may have been meant.
fault-nearest = { $fault } (nearest: { $nearest })
fault-cell_unreadable = not a value that this column takes
# $unit is the code of a unit.
fault-cell_number_in_unit = a number in { $unit }; decimals follow a point; leave the cell empty if it is not known
fault-cell_number = a number; decimals follow a point; leave the cell empty if it is not known
fault-cell_whole_number = a whole number; leave the cell empty if it is not known
fault-row_denied = denies what follows from the rest of the row; leave it out or make them agree
fault-row_not_an_object = a row is an object with the columns as members
fault-row_too_long = the row is too long
fault-row_not_json = not a JSON object on one line
fault-row_repeats_member = names a member twice
fault-row_too_deep = nests too deeply
fault-row_not_utf8 = not text in UTF-8
fault-row_not_csv = a quotation mark stands where none may, or nothing closes it
# $cells and $columns are counts.
fault-row_width = has { $cells } cells where the header has { $columns }
fault-cell_not_utf8 = not text in UTF-8
