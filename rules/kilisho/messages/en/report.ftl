## The report on a fleet of installations, printed for whoever decides where to go first.

report-title = Report on a fleet of digesters
report-installations =
    { $count ->
        [one] One installation
       *[other] { $total } installations
    }
# $total is a count, written as a number.
report-invented = These installations are invented; no row is a real one.
report-invented-some = { $total } of these installations are invented; none of them is a real one.
report-what = What was found
report-count = Count
report-share = Share
# Kinds of findings, as rows and columns of tables.
report-dangerous = Dangerous
report-doubtful = Number that cannot be right
report-mis_sized = Wrong size
report-starved = Starved
report-fed_wrongly = Fed wrongly otherwise
report-underperforming = Too little gas
report-unknown = Not known enough
report-refused = Cannot be read
report-sound = Sound in all that is asked
report-several = An installation may stand in several of these rows.
report-dangers = Go there first: a check of danger level failed
report-dangers-none = No check of danger level failed in what was stated. That is not safety: see what nobody stated.
report-dangers-none-read = No check of danger level failed in the rows that could be read. That is not safety: see what nobody stated.
# $count is the number of rows, $total the same as it is written.
report-unjudged =
    { $count ->
        [one] One row could not be read: what it states of dangers was not judged.
       *[other] { $total } rows could not be read: what they state of dangers was not judged.
    }
report-open = Nobody has ruled these dangers out
# $total and $rows are counts, written as numbers.
report-open-lead = In { $total } of { $rows } installations at least one check of danger level has no answer. Until somebody has looked, none of them is safe.
# $check is a sentence, $share a part of all installations.
report-open-one = { $check }: not known in { $share }
report-open-others =
    { $count ->
        [one] One more check of danger level has no answer somewhere.
       *[other] { $count } more checks of danger level have no answer somewhere.
    }
report-verdicts = Verdicts
report-verdict = Verdict
report-verdict-refused = The row cannot be read; the answers say what is wrong with it.
report-by = By { $column }
report-no-place = not stated
report-other-places = { $count } smaller ones together
report-worst = The worst, and what to do first
report-worst-none = No check of caution level or worse failed.
report-which = Which
report-row = row { $row }
report-first = What is wrong, and what to do first
report-more =
    { $count ->
        [one] One more check failed.
       *[other] { $count } more checks failed.
    }
# $member is a column, $value a number in its unit, $written the same as it was written, in another unit.
report-slip = { $member } is probably { $value }: the number in the row is right as { $written }.
report-slip-decimal_point = { $member } is probably { $value }: its decimal point has slipped.
report-slips = Numbers probably written in another unit
report-slips-lead = Where this is so in nearly all rows of a column, the whole column is probably in another unit. Find out in which before you convert it and answer the table again: an amount of a week or a month looks like a slipped decimal point too.
report-slips-as = Read as
report-slips-point = decimal point slipped
report-failed = What fails most often
report-check = Check
# $title says what should hold, and does not.
report-not-so = Not so: { $title }
report-do = What to do
report-faults = Rows that cannot be read
report-fault = Column and fault
# What is wrong with a cell, by the code of its fault.
report-fault-cell_unreadable = not a value that the column takes
report-fault-date_expected = not an existing day as YYYY-MM-DD
report-fault-list_expected = not a list of words that the column knows
report-fault-not_one_of = not a word that the column knows
report-fault-number_expected = not a number; decimals follow a point
report-fault-out_of_range = a number beyond the bounds of the column
report-fault-row_unreadable = the row as a whole cannot be read
report-fault-text_expected = text that is empty or too long
report-fault-unit_expected = the unit is not text
report-fault-unknown_id = not an id of the rulebook
report-fault-unknown_unit = not a unit that the column knows
report-fault-value_and_unit = not a value with its unit
report-fault-whole_number_expected = not a whole number
report-fault-yes_no_expected = neither true nor false
report-unstated = What nobody stated
report-unstated-record = { $share } % of the record's cells are empty.
report-unstated-facts = Of { $facts } further facts that a table may state, { $never } stand in no row.
report-column = Column
report-left-out = Not stated
report-unread = Columns that were not read
report-unread-lead = No column is read by these names. Look for misspelt ones.
report-order = The worst are told by their verdict, then by how many checks of danger and of warning level failed, then by how little gas they give.
