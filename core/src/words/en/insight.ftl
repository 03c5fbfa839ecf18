# What the numbers of one diary or of all can bear. Folded; read by a clinician. No verdict anywhere.

insight-title = Numbers, for a closer look
insight-self-reported = Everything here was told by the person. It is few values, in whole numbers from 0 to 10, and each leans on the one before.
insight-nominal = Limits, intervals and p are worked out as if each value stood alone. They are nominal: read them as a rough guide, not as odds.
insight-no-verdict = No number here says what to do, and none mixes steps or revisions.

insight-span = { $first } to { $last }, revision { $revision }
insight-stretch = { $step }, { $span }
insight-interval = { $lower } to { $upper }
insight-p = p { $p }
insight-p-under = p under { $p }
insight-count = { $count }
insight-share = { $share }
insight-none = –
insight-median-range = { $median } ({ $least } to { $most })

insight-counts = Counts, latest time on a step first
insight-column-step = Step, days, revision
insight-column-sessions = Sessions
insight-column-days = Days with a session
insight-column-on-step = Sessions with the step’s size and position
insight-column-rated = Of these, rated
insight-column-peak = Highest discomfort: median (range)

insight-done = What was done
insight-gaps = { $days } days with a session; from one to the next, median { $median ->
        [one] 1 day
       *[other] { $median } days
    }, at most { $longest ->
        [one] 1 day
       *[other] { $longest } days
    }
insight-on-step = with the step’s size and position: { $sessions ->
        [one] 1 session
       *[other] { $sessions } sessions
    }, { $unrated ->
        [0] none
       *[other] { $unrated }
    } of them without a rating of highest discomfort
insight-minutes = minutes of these: median { $median }, range { $least } to { $most }
insight-done-bears = These are all the sessions told, not a sample: no interval belongs to them. What was not written down is not here.

insight-ratings = Ratings in the middle and at the ends
insight-ratings-bears = A median and a range describe these sessions and no others. Sessions without a rating may have been the hard ones.

insight-change = First and last ratings
insight-change-bears = Three ratings at each end are few, and one bad day can move them. The thresholds are averages of other people.

insight-chart = Usual limits (individuals chart)
insight-limits = { $ratings } ratings, mean { $centre }, mean difference from one to the next { $moving }; limits { $lower } to { $upper } on the scale of 0 to 10
insight-beyond-none = no rating lies beyond the limits
insight-beyond = { $count ->
        [one] 1 rating lies beyond the limits: { $list }
       *[other] { $count } ratings lie beyond the limits: { $list }
    }
insight-beyond-one = { $day } ({ $rating })
insight-chart-bears = Ratings that lean on the day before make the limits too narrow, so some beyond them come by chance. A rating beyond them is a day to ask about, not a finding.
insight-chart-source = NIST/SEMATECH e-Handbook 6.3.2.2. Shown from { $least } ratings on (Provost and Murray, The Health Care Data Guide; authors differ).

insight-trend = Direction over time
insight-trend-pairs = of { $pairs } pairs of an earlier and a later rating, the later is lower in { $lower }, equal in { $equal }, higher in { $higher }; tau { $tau }, Mann-Kendall { $p }
insight-slope = median slope { $slope } points a week (Theil-Sen)
insight-slope-interval = median slope { $slope } points a week (Theil-Sen; 95 % interval { $interval })
insight-trend-bears = p and interval are nominal: ratings that lean on the day before make them look surer than they are. A direction says nothing about its cause.
insight-trend-source = Sen 1968, J Am Stat Assoc 63:1379; Mann 1945, Econometrica 13:245. Shown from { $least } ratings on (Gilbert 1987: up to ten the approximation does not hold).

insight-too-few = Not shown
insight-too-few-says = Rated here: { $rated }. First and last ratings are compared from { $change } on, a direction is shown from { $trend } on, limits from { $chart } on.

insight-compared = Two times on { $step }
insight-compared-rated = { $earlier }: { $first } rated; { $later }: { $second } rated
insight-compared-pairs = of { $pairs } pairs of a rating of each, the later time’s is lower in { $lower }, equal in { $equal }, higher in { $higher }
insight-compared-beyond = ratings of the later time: { $later }; below all earlier ones: { $below }; above all: { $above }
insight-compared-nap = nonoverlap of all pairs { $nap } towards lower (0.5: alike; 1: all lower); tau { $tau } (-1: all lower)
insight-compared-few = Shown from { $least } ratings in each time on.
insight-compared-bears = It says how far the two times lie apart, not why: between them lie days, other steps and perhaps another plan. A drift within either time looks like a difference between them.
insight-compared-source = Parker 2011, Behav Modif 35:303. Shown from { $least } ratings in each on (What Works Clearinghouse, single-case standards).

insight-cabinet = Time on a step, over all diaries
insight-cabinet-diaries = { $count ->
        [one] 1 diary, with its latest summary.
       *[other] { $count } diaries, each with its latest summary.
    } Of each person only the first time on a kind of step counts. Days are calendar days.
insight-cabinet-unsure = { $count ->
        [one] 1 of them is left out: entries are missing or were erased.
       *[other] { $count } of them are left out: entries are missing or were erased.
    }
insight-cabinet-censored = Whose time was not seen to its end counts for as long as it was seen. That is right only if those people would have gone on like the others. Who got a new plan, or stopped sharing, may well differ.
insight-cabinet-alike = Steps of the same size and position are put together, whatever their plan. A plan’s own rule says how early a step can end, so these times tell as much about plans as about people.
insight-cabinet-no-verdict = Staying long on a step can be right, and this says nothing about any one person.
insight-cabinet-source = Kaplan and Meier 1958, J Am Stat Assoc 53:457; intervals by Greenwood’s variance on the scale of log(-log), and Wilson 1927, J Am Stat Assoc 22:209. Shown from { $least } people on (common practice, no source).

insight-time-counts = { $people ->
        [one] 1 person began
       *[other] { $people } people began
    }. Left for a later step: { $later }; for an earlier one: { $earlier }. Not seen to the end: still on it: { $still }; new plan: { $plan }
insight-time-few = Shown from { $least } people on.
insight-time-median = estimate: by day { $days } half had left it
insight-time-no-median = estimate: as far as it was seen, fewer than half had left it
insight-went-on = of { $seen } whose end was seen, { $later } went on to a later step: { $share } (95 % interval { $interval }, as if they were a sample of people like them)
insight-time-table = Estimated share still on it
insight-column-day = Day
insight-column-at-risk = Seen so long
insight-column-still-on = Share on it longer than this
insight-column-interval = 95 % interval
