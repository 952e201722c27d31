## Why a part of a farm plan is not answered; shown after "since" or beside the part's name.
plan-digester-working = the digester is working already
plan-nothing-to-charge = neither herd nor feed is stated
plan-no-day-of-charge = needs a first charge with the day on which the digester is ready
plan-no-use-stated = nothing says what the gas is used for
plan-no-crops = no crops are stated
# $faults are what is wrong with the question that the plan would have asked; see faults.ftl.
plan-refused = { $faults }
plan-charged-once = this kind of digester is charged once and left; ask batch-rotation for its gas and its next charges
# What is not fed, told beside the plan. $mass is an amount a day.
plan-left-over = The farm has { $mass } more to feed than this digester is given: it stays for the field, or for a larger digester. Feeding it too would leave each kilogram less time in the digester.
