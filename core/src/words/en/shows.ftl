# What this phone can still show to somebody who looks. Said honestly: Frond is never invisible.

shows-title = What this phone can still show
shows-says = Frond cannot make itself invisible. Here is what someone who looks at this phone may find, what Frond does about it, and what only you can do.
shows-danger = If it is not safe that someone finds this, do what keeps you safe first. You can erase everything. If you are in danger, look at whom to call.

shows-installed = The app itself
shows-installed-frond = Its name and its picture say nothing about what it is for.
shows-installed-you = It still stands in the list of apps, in the history of the app store, and where the phone shows how long apps were used. Someone who knows its name knows what it is.

shows-reminders = Reminders
shows-reminders-frond = They are off until you turn them on, and they say only the plain words you chose from a list.
shows-reminders-you = That there is a reminder can be seen on a locked phone, a watch or in a car. Turn reminders off, or hide them in the settings of the phone.
shows-reminders-hidden = They are off until you turn them on. They say only the plain words you chose, and Frond asks the phone to keep them off the locked screen and off watches.
shows-reminders-hidden-you = A buzz or a sound can be noticed all the same, and a phone that has no lock shows them always. Turn reminders off if that is too much.

shows-calendar = A calendar file
shows-calendar-frond = It holds the times and the same plain words, and nothing else. Frond makes it only when you ask for it.
shows-calendar-you = What is in your calendar stays there, and others may share that calendar. Delete it there yourself.

shows-given = Summaries and copies you gave away
shows-given-frond = They can be sealed, and their names say nothing. Frond keeps no list of them.
shows-given-you = Frond cannot call them back. Delete them where you put them: downloads, messages, mail, other devices.

shows-screen = Pictures of the screen
shows-screen-frond = Frond hides its screens in the list of open apps and in pictures of the screen.
shows-screen-part = Frond hides its screens in the list of open apps, and while the screen is recorded or shown on another one. It cannot hide them in a picture that someone takes of the screen on this phone.
shows-screen-not = On this device Frond cannot hide its screens in the list of open apps or in pictures of the screen.
shows-screen-you = Close Frond when you are done. Someone beside you, or another camera, can still see it.
shows-screen-leave = Press “Leave” and Frond closes at once; it is then gone from the list of open apps, too. Someone beside you, or another camera, can still see the screen.

shows-keyboard = The keyboard
shows-keyboard-frond = Frond asks the keyboard to learn nothing from what you type.
shows-keyboard-not = On this device Frond cannot keep the keyboard from learning what you type.
shows-keyboard-you = Some keyboards learn all the same, or send what is typed to the company that makes them. Use the one that came with the phone, or write little.

shows-backups = Backups of the phone
shows-backups-frond = Your diary is sealed wherever it lies, and Frond asks the phone to leave it out of its backups.
shows-backups-not = Your diary is sealed wherever it lies. On this device Frond cannot keep it out of backups.
shows-backups-you = A backup or another device on the same account may still show that the app was there.

shows-watched = Someone who controls the phone
shows-watched-frond = Frond can do nothing against a program that watches the screen or what you type.
shows-watched-you = If you think that someone watches this phone, use another one to ask for help.
