# The calendar, one entry, and putting it right.

calendar-title = Calendar
calendar-month = { $month ->
        [1] January
        [2] February
        [3] March
        [4] April
        [5] May
        [6] June
        [7] July
        [8] August
        [9] September
        [10] October
        [11] November
       *[12] December
    } { $year }
calendar-weekday = { $day ->
        [1] Mon
        [2] Tue
        [3] Wed
        [4] Thu
        [5] Fri
        [6] Sat
       *[7] Sun
    }
calendar-empty = Nothing stands in this month.
calendar-time-off = Time off
calendar-step = Another step
calendar-sign = Something was noted

action-calendar = Calendar
action-month-before = The month before
action-month-after = The month after
action-open-day = What you wrote that day
action-open-entry = Open this entry

entry-title = One entry
entry-position = Position: { $position }
entry-written = Written { $when }
entry-put-right = Put right { $when }
entry-late = Told some time after. It stays as it is; your plan counts it for everything but going on to the next step.
entry-left-out = Left out. You still see it here, and you can count it again.
entry-versions = How it stood before
entry-version-taken-back = This version was taken back.
entry-rated = Rated { $number } of 10: { $rating }
entry-rather-not-say = Rather not say: { $rating }
entry-note = Your note: { $note }
entry-closed = With it was closed: { $sign }
entry-go-on = The person you spoke with said that you may go on.
entry-no-go-on = Whether you may go on was not part of it.
entry-step = Step: { $step }

action-correct = Put right
action-leave-out = Leave this out
action-count-again = Count it again
action-keep = Keep

correct-title = Put right
correct-when = When was it?
correct-stays-visible = The new version counts from now on. The first one stays where you can see it.
correct-only-left-out = This one cannot be changed, but you can leave it out.
correct-not-here = There is nothing to change here.
