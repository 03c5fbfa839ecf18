# The safety text: every question about a sign, what each tier says, the care notes.
# A licensed clinician signs off this file as a whole; changing a word of it opens the sign-off again.
# Not reviewed yet.

## Headings of the groups of questions. Neutral on purpose.

group-feeling-and-control = Feeling and control
group-pain-and-temperature = Pain and temperature
group-bleeding = Bleeding
group-pregnancy-and-birth = Pregnancy and birth
group-chest-and-legs = Chest and legs
group-trainer-and-skin = Equipment and skin
group-urine-and-discharge = Bladder and infection
group-treatment-and-medicine = Treatment and medicine
group-mood-and-safety = How you are

## The signs. "-ask" is the question, "-say" its name as the person would say it on the telephone.

sign-numb-saddle-ask = Is it numb around your genitals, your bottom or the inside of your thighs?
sign-numb-saddle-say = numbness around my genitals or bottom
sign-cannot-pass-urine-ask = Are you unable to start passing urine, to feel it, or to control it?
sign-cannot-pass-urine-say = not being able to start, feel or control passing urine
sign-bowel-control-lost-ask = Have you lost control of your bowels?
sign-bowel-control-lost-say = losing control of my bowels
sign-both-legs-weak-ask = Are both of your legs weak or numb?
sign-both-legs-weak-say = weakness or numbness in both legs
sign-severe-pain-ask = Is there very bad pain, or pain that is quickly getting worse?
sign-severe-pain-say = very bad pain, or pain that is quickly getting worse
sign-heavy-bleeding-ask = Are you bleeding heavily?
sign-heavy-bleeding-say = heavy bleeding
sign-fainting-ask = Have you fainted, or do you feel you are about to?
sign-fainting-say = fainting, or nearly fainting
sign-very-high-temperature-ask = Do you have a very high temperature, or are you shivering?
sign-very-high-temperature-say = a very high temperature or shivering
sign-vomiting-with-pelvic-pain-ask = Are you being sick and have pain low in your belly?
sign-vomiting-with-pelvic-pain-say = being sick with pain low in my belly
sign-fever-with-rash-ask = Do you have a fever together with a rash, feeling faint or feeling confused? Take special care if you use or have just used a tampon.
sign-fever-with-rash-say = a fever with a rash, feeling faint or feeling confused
sign-pregnancy-severe-pain-ask = Could you be pregnant, and is there very bad pain low in your belly or at the tip of your shoulder?
sign-pregnancy-severe-pain-say = very bad pain low in my belly or at the tip of my shoulder, and I could be pregnant
sign-pregnancy-bleeding-with-pain-ask = Could you be pregnant, and are you bleeding and have pain or feel faint?
sign-pregnancy-bleeding-with-pain-say = bleeding with pain or feeling faint, and I could be pregnant
sign-after-birth-headache-or-vision-ask = Have you had a baby recently, and do you have a very bad headache or a change in how you see?
sign-after-birth-headache-or-vision-say = a very bad headache or a change in how I see, and I have had a baby recently
sign-after-birth-soaking-pad-ask = Have you had a baby recently, and does bleeding soak a pad within an hour?
sign-after-birth-soaking-pad-say = bleeding that soaks a pad within an hour, and I have had a baby recently
sign-after-birth-large-clots-ask = Have you had a baby recently, and are you passing large clots of blood?
sign-after-birth-large-clots-say = large clots of blood, and I have had a baby recently
sign-chest-pain-ask = Do you have pain in your chest?
sign-chest-pain-say = pain in my chest
sign-breathless-ask = Are you short of breath?
sign-breathless-say = being short of breath
sign-trainer-stuck-with-pain-or-bleeding-ask = Is a trainer stuck, and is there pain or bleeding?
sign-trainer-stuck-with-pain-or-bleeding-say = a trainer that is stuck, with pain or bleeding
sign-fever-during-chemotherapy-ask = Are you having chemotherapy, and do you have a fever?
sign-fever-during-chemotherapy-say = a fever, and I am having chemotherapy
sign-thoughts-of-self-harm-ask = Are you thinking about hurting yourself or ending your life?
sign-thoughts-of-self-harm-say = thoughts of hurting myself
sign-danger-at-home-ask = Are you in danger at home, or from someone close to you?
sign-danger-at-home-say = not being safe at home
sign-more-than-a-little-bleeding-ask = Are you bleeding more than a little?
sign-more-than-a-little-bleeding-say = more than a little bleeding
sign-pain-that-stays-ask = Is there pain that stays after you have stopped?
sign-pain-that-stays-say = pain that stays after I have stopped
sign-unusual-discharge-ask = Is there discharge that is unusual for you or smells bad?
sign-unusual-discharge-say = discharge that is unusual or smells bad
sign-fever-ask = Do you have a fever (38 °C or 100.4 °F, or more)?
sign-fever-say = a fever
sign-bleeding-between-periods-or-after-sex-ask = Have you bled between periods or after sex?
sign-bleeding-between-periods-or-after-sex-say = bleeding between periods or after sex
sign-cannot-be-removed-ask = Is there something inside that you cannot take out?
sign-cannot-be-removed-say = something inside that I cannot take out
sign-bleeding-when-pregnant-ask = Are you pregnant, and have you bled at all, even once?
sign-bleeding-when-pregnant-say = bleeding, and I am pregnant
sign-bleeding-after-menopause-ask = Have your periods stopped for good (menopause), and have you bled at all, even once?
sign-bleeding-after-menopause-say = bleeding after my menopause
sign-distress-ask = Did you feel very upset? Or as if something from the past was happening again? Or far away from your body?
sign-distress-say = feeling very upset or far away from my body
sign-painful-swollen-calf-ask = Is one of your calves painful and swollen?
sign-painful-swollen-calf-say = a painful, swollen calf
sign-urine-or-stool-from-vagina-ask = Does urine or stool come out of your vagina?
sign-urine-or-stool-from-vagina-say = urine or stool coming from my vagina
sign-sores-or-blisters-ask = Are there sores or blisters?
sign-sores-or-blisters-say = sores or blisters
sign-rash-or-burning-from-material-ask = Is there a rash, or burning, from the trainer or the lubricant?
sign-rash-or-burning-from-material-say = a rash or burning from the trainer or the lubricant
sign-coil-thread-missing-or-stem-felt-ask = Do you have a coil, and is its thread missing or can you feel its hard end?
sign-coil-thread-missing-or-stem-felt-say = a coil whose thread is missing or whose hard end I can feel
sign-blood-in-urine-ask = Is there blood in your urine?
sign-blood-in-urine-say = blood in my urine
sign-new-pain-passing-urine-ask = Does it newly hurt to pass urine?
sign-new-pain-passing-urine-say = new pain when I pass urine
sign-pregnancy-ask = Are you pregnant, or could you be?
sign-pregnancy-say = being pregnant, or perhaps pregnant
sign-recent-birth-or-stitches-ask = Have you had a baby or stitches recently?
sign-recent-birth-or-stitches-say = a recent birth or stitches
sign-recent-pelvic-surgery-ask = Have you had an operation in your pelvis recently, and has your surgeon not yet said that you may practise?
sign-recent-pelvic-surgery-say = a recent operation in my pelvis
sign-radiotherapy-not-cleared-ask = Have you had radiotherapy to your pelvis, and has nobody yet said that you may practise?
sign-radiotherapy-not-cleared-say = radiotherapy to my pelvis, and nobody has yet said that I may practise
sign-active-infection-ask = Do you have an infection now?
sign-active-infection-say = an infection
sign-newly-fitted-coil-ask = Have you had a coil fitted recently?
sign-newly-fitted-coil-say = a newly fitted coil
sign-spotting-ask = Have you noticed a few spots of blood?
sign-spotting-say = a few spots of blood
sign-blood-thinners-or-easy-bleeding-ask = Do you take blood thinners, or do you bleed easily?
sign-blood-thinners-or-easy-bleeding-say = blood thinners, or bleeding easily
sign-current-chemotherapy-ask = Are you having chemotherapy now?
sign-current-chemotherapy-say = chemotherapy
sign-pessary-ask = Do you use a pessary?
sign-pessary-say = a pessary
sign-allergy-to-material-ask = Are you allergic to what your trainer is made of, or to your lubricant?
sign-allergy-to-material-say = an allergy to the trainer or the lubricant
sign-a-caution-say = a caution that is still open

## Stop and call. The lines stand in the order in which they are shown.

call-emergency = Please call { $number } now. It is the emergency number in { $country }.
call-emergency-elsewhere = In another country, call the emergency number there.
call-emergency-unknown = Please call the emergency number now, the one for the country you are in.
call-emergency-not-guessed = Frond does not know that number and does not guess it. If you do not know it either, ask someone near you.

call-stop-now = Stop now. If a trainer is inside, let it come out slowly. Never pull hard.
call-pause-now = Please leave trainers for now. If one is inside, let it come out slowly. Never pull hard.
call-leave-it = If it does not come out easily, leave it where it is, and say so on the telephone.
call-somewhere-safe = If you can, go to a place where you feel safe, or to someone you trust.
call-eyes-open = Keep your eyes open. Feel your feet on the floor and look around you. Take all the time you need.

call-no-answer-emergency = If you cannot get through, call again, or ask someone near you to call.
call-today = Please speak with someone today, even if the clinic is closed.
call-clinician = Please contact { $clinician } as soon as you can, and before you use a trainer again: { $contact }. Hours: { $hours }.
call-clinician-ask = Please ask { $clinician } before you use a trainer again: { $contact }. Hours: { $hours }.
call-clinician-after = Once you have help, let { $clinician } know too: { $contact }. Hours: { $hours }.
call-out-of-hours = Outside these hours: { $line }
call-nobody-answers = If nobody answers: { $advice }
call-nobody-answers-unsaid = If nobody answers, use the line for outside these hours.
call-if-worse = If it gets worse or cannot wait, call { $number }. It is the emergency number in { $country }. In another country, call the emergency number there.
call-own-doctor = Please contact your own doctor as soon as you can, and before you use a trainer again. If you are pregnant or have just had a baby, you can also call your midwife.
call-own-doctor-ask = Please ask your own doctor before you use a trainer again. If you are pregnant or have just had a baby, you can also call your midwife.
call-own-doctor-after = Once you have help, let your own doctor or your midwife know too.
call-if-worse-unknown = If nobody answers and it gets worse or cannot wait, call the emergency number of the country you are in. Frond does not know that number and does not guess it.

call-dial-emergency = Call { $number } ({ $country })
call-dial-clinician = Call { $clinician }: { $number }
call-dial-out-of-hours = Outside hours: { $number }

call-read-emergency = You can read this out: “I need help now. This is what I noticed: { $signs }. I noticed it { $when }.”
call-read-emergency-undated = You can read this out: “I need help now. This is what I noticed: { $signs }.”
call-read-stop = You can read this out: “I practise at home for my pelvic health. I stopped because of this: { $signs }. I noticed it { $when }.”
call-read-stop-undated = You can read this out: “I practise at home for my pelvic health. I stopped because of this: { $signs }.”
call-read-ask = You can read this out: “I practise at home for my pelvic health. I would like to ask before I go on, because of this: { $signs }. I noticed it { $when }.”
call-read-ask-undated = You can read this out: “I practise at home for my pelvic health. I would like to ask before I go on, because of this: { $signs }.”
call-read-pause = You can read this out: “I practise at home for my pelvic health. My plan says that it is time to talk before I go on.”

call-nobody-told = Nobody has been told. Frond sends nothing.

call-nothing-continues = There is nothing to practise now. Getting help comes first.
call-breathing-continues = Trainers wait for now. Quiet breathing, without holding your breath, is fine if it feels good to you. So is writing in your diary.
call-grounding-continues = Trainers wait for now. Breathing can wait too. Once you feel steady, quiet breathing without holding your breath is there if you want it.
call-noted = Your plan says that a few spots of blood may be noted, and that you may go on. If it is more than a few spots, please stop and report it as bleeding.

call-right-to-stop = You did right to stop.
call-right-to-ask = You did right to ask first.
call-right-to-say = You did right to say so.
call-pause-is-planned = This pause is a part of your plan. You have done nothing wrong.

call-later = Later, when you have spoken with someone, choose “I spoke with …”. Until then trainers wait.

## When the questions are asked, and the answers.

group-ask = Is any of these so for you?
not-sure-counts = If you are not sure, say “not sure”. It counts as yes, and that is fine.
answer-yes = Yes
answer-no = No
answer-not-sure = Not sure

anything-new-ask = Anything new since last time?
anything-new-nothing = Nothing new
anything-new-something = Something
anything-new-not-today = Not today
anything-new-not-today-said = That is fine. You do not need a reason.

screening-new-programme = Before you begin with this plan, a few questions about your health.
screening-new-revision = Your plan has changed. A few questions about your health before you go on.
screening-gap = Welcome back. A few questions about your health before you go on.
screening-interval = Your plan asks these questions from time to time.

## General care.

care-lubricant = Use a lubricant made with water. Do not use petroleum jelly, or anything made with oil.
care-washing = Wash the trainer with warm water and soap, rinse it well, and dry it.
care-smooth-surface = Before you use it, feel that the surface is smooth. If it is cracked or rough, do not use it.
care-personal-use = Your trainers are for you alone. Do not share them.

## Breathing.

breath-over-breathing = If you feel light-headed or tingly, or your heart races, stop and breathe as you normally do.
breath-holds = Do not hold your breath if you are or may be pregnant, or if you have high blood pressure or trouble with your heart or lungs. Ask your clinician about it.
hold-pregnancy-ask = Are you pregnant, or could you be?
hold-high-blood-pressure-ask = Do you have high blood pressure?
hold-heart-trouble-ask = Do you have trouble with your heart?
hold-lung-trouble-ask = Do you have trouble with your lungs?

## Grounding, with open eyes, before any breathing.

grounding-stopped = You have stopped. Nothing more is asked of you now.
grounding-eyes = Keep your eyes open.
grounding-feet = Feel your feet, or whatever holds you up.
grounding-see = Look around slowly. Name a few things that you can see.
grounding-hear = Listen. Name a sound or two.
grounding-touch = Touch something near you. Is it warm or cool, rough or smooth?
grounding-time = Take all the time you need. The questions can wait.

## Cautions beside what is done: a practice, a note, a question, an erase, what does not open.

today-caution-stop = You can stop at any moment. Stopping is always right.
today-caution-never-hurt = It is not meant to hurt. Never push or force.
today-caution-clinician = Your clinician's word comes before anything on this screen.
breathing-holds-left-out = The breath holds in your plan are left out here, for your safety. Ask your clinician about them.
hold-questions-why = Your plan has moments of holding your breath. They are left out until these questions are answered, and stay out if one of the answers is yes or not sure.
stopped-title = You stopped. That is always right.
stopped-let-out = If a trainer is inside, let it come out slowly. Never pull hard.
stopped-ask = Is something not right, in your body or in how you feel?
log-note-caution = Nobody reads this until you share it. If you are in danger or think of hurting yourself, do not write it here: look at whom to call.
signs-how = Choose what fits. If you are not sure, choose it: not sure counts as yes.
questions-nobody-reads = Nobody reads these until you share them.
questions-cannot-wait = Is it something that cannot wait? Then call. Do not write it here and wait.
phone-code-wait-emergency = In an emergency, do not wait for this. Call the emergency number of the country you are in.
cannot-open-help = If you need help now, do not wait for this. Call the person who looks after you, or the emergency number of the country you are in.
erase-caution-stays = A caution or a pause that is open stays open until you have spoken with someone.
