## A finding that no check of a rulebook makes: stated values deny each other
values-agree = The stated values agree with each other
# $inputs are names of members of the request, such as total_volume, fill_share.
values-agree-why = It follows from { $inputs }, which say otherwise; the stated value was used.
values-agree-do = Measure again, and mind the unit: litres for cubic metres is the usual slip.

## The safety check in words
# $titles are those of checks; each states what must hold.
safety-stop = Stop. Not met: { $titles }.
# $titles are those of checks that are alarms, such as the measured air of a room; each states what must hold.
safety-act-at-once = Act at once. Not met: { $titles }.
safety-more-unanswered = { $count ->
    [one] { $count } more check of danger level is not answered.
   *[other] { $count } more checks of danger level are not answered.
}
safety-unanswered = { $count ->
    [one] { $count } check of danger level is not answered, so this cannot be called safe.
   *[other] { $count } checks of danger level are not answered, so this cannot be called safe.
}
safety-lesser-failed = { $count ->
    [one] { $count } lesser check failed.
   *[other] { $count } lesser checks failed.
}
safety-failed = { $count ->
    [one] { $count } check failed, not of danger level.
   *[other] { $count } checks failed, none of them of danger level.
}
safety-clear = No check failed on what was stated.
safety-statement = A clear verdict means that no check failed on what was stated, not that the plant is safe: local codes and licensed practice decide.
