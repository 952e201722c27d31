# Two whole sentences, one after the other; most languages keep just this.
sentences-2 = { $first } { $second }

## Notes on what was assumed for want of a statement
assumed-structure = The kind of digester was not stated.
assumed-substrate = Neither herd nor feed was stated.
# $animal is an id, such as dairy_cow.
assumed-housing = Housing of { $animal } was not stated.
assumed-altitude = Nobody said how high the place lies; gas takes more room the higher it is.
