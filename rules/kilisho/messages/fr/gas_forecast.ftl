# of c0887e12, reviewed: false
forecast-more-feed = Un quart d'alimentation et d'eau en plus.
# of 27ec7f09, reviewed: false
forecast-less-feed = Un quart d'alimentation et d'eau en moins.
# of a51c39e3, reviewed: false
forecast-more-water = Moitié plus d'eau avec la même alimentation.
# of 69374801, reviewed: false
forecast-less-water = Moitié moins d'eau avec la même alimentation.
# of cfed2db6, reviewed: false
forecast-weekly = La même alimentation en une dose par semaine.
