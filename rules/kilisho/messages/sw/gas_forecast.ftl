# of c0887e12, reviewed: false
forecast-more-feed = Robo zaidi ya malisho na maji.
# of 27ec7f09, reviewed: false
forecast-less-feed = Pungufu kwa robo ya malisho na maji.
# of a51c39e3, reviewed: false
forecast-more-water = Maji zaidi kwa nusu, malisho yale yale.
# of 69374801, reviewed: false
forecast-less-water = Nusu ya maji, malisho yale yale.
# of cfed2db6, reviewed: false
forecast-weekly = Malisho yale yale kwa mara moja kwa wiki.
