# of f8ac34b7, reviewed: false
detail-leaving = Huduma inasimamishwa na haipokei kazi mpya; nyingine inajibu.
