# For the visit: questions, activities and goals, how it was the day after, a summary being put together.

questions-title = Questions for your visit
questions-empty = Nothing yet. Write down what you would like to ask, when you think of it.
questions-new = What would you like to ask?

activities-title = What matters to you
activities-how = Rate how it is now. There is no right or wrong answer.
activities-skip = You need not answer all of them, or any.
activities-empty = Your plan names no activities or goals. You can tell your clinician what matters to you.
activities-ask = How able are you now: { $activity }?
activities-least = not able to do it
activities-most = as able as before
activities-goal-ask = How is it now, next to what you hoped for: { $goal }?
activities-goal-much-less = Much less than hoped
activities-goal-less = Less than hoped
activities-goal-as-hoped = As hoped
activities-goal-more = More than hoped
activities-goal-much-more = Much more than hoped

settled-title = Did it settle?
settled-about = This is about your session { $when }.
settled-why = However it is, you did nothing wrong. Your answer changes nothing in what your plan says.
settled-yes = Yes
settled-not-yet = Not yet

summary-from = From which day? Leave it empty to begin at the beginning.
summary-to = Up to and with which day? Leave it empty to end today.
summary-with-notes = With my notes
summary-with-questions = With my questions for the visit
summary-way-recipients = Seal it for the people in my plan
summary-way-passphrase = Seal it with a passphrase
summary-way-open = Do not seal it
summary-ask-time-alone = Tell them that I would like time alone with them. It goes only into a sealed file, and it is not shown here again.

action-questions = Questions for your visit
action-activities = What matters to you
action-settled = Say how it was after
action-summary = Put a summary together
action-look-again = See what goes along
