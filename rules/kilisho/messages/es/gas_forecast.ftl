# of c0887e12, reviewed: false
forecast-more-feed = Una cuarta parte más de alimentación y agua.
# of 27ec7f09, reviewed: false
forecast-less-feed = Una cuarta parte menos de alimentación y agua.
# of a51c39e3, reviewed: false
forecast-more-water = La mitad más de agua con la misma alimentación.
# of 69374801, reviewed: false
forecast-less-water = La mitad del agua con la misma alimentación.
# of cfed2db6, reviewed: false
forecast-weekly = La misma alimentación en una sola dosis por semana.
