# Accepting a plan, in cards, and confirming the step.

accept-title = A plan for you
accept-whose-title = Whose plan this is
accept-for = It is for: { $whom }
accept-from = { $clinician }, { $clinic }, wrote it on { $date }. It is revision { $revision }.
accept-younger = It is for someone who is not yet an adult. The clinician confirms that the local rules for their safety were followed.
accept-steps-title = The steps
accept-step = { $name }: { $used }, { $schedule }
accept-start = You begin with: { $name }
accept-rule-title = What comes next
accept-rule = Your clinician wrote down when to stay, when to go back and when to go on. Frond tells you what that says. You decide.
accept-no-rule = There is no rule in this plan. Frond suggests nothing, and keeps your diary.
accept-call-title = Whom to call
accept-contact = { $name }, { $phone }. Hours: { $hours }.
accept-emergency = In an emergency in { $country }: { $number }.
accept-cautions-title = To take care of
accept-until-title = Until when
accept-until = Your clinician looks at it again by { $date }.
accept-yours = Is this yours? It was made for: { $whom }
accept-yes = Yes, this is mine

step-check-title = Is this what you use now?
