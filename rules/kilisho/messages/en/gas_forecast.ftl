## What a change of the last feeding plan would do: each names a change that is told beside its gas.
forecast-more-feed = A quarter more feed and water.
forecast-less-feed = A quarter less feed and water.
forecast-more-water = Half as much water again with the same feed.
forecast-less-water = Half the water with the same feed.
forecast-weekly = The same feed in one dose a week.
