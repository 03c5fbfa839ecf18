//! Of the Android app: H4, H10, H11, H17, H37.

use super::Removal;

const NOTICES: &str = "android-shell/src/main/kotlin/frond/home/duties/reminders/Notices.kt";
const COVER: &str = "android-shell/src/main/kotlin/frond/home/duties/leaving/Cover.kt";
const KEYS: &str = "android-shell/src/main/kotlin/frond/home/duties/keys/Keys.kt";
const ALARM: &str =
    "an alarm that comes shows the neutral words, hidden on a locked screen and kept from a watch";
const SECRET: &str =
    "nothing can be copied out of a field for a code or the twelve words, hidden or shown";
const LEFT: &str =
    "quick exit goes home, leaves the list of open apps, and the next opening shows nothing first";

pub(super) const ALL: &[Removal] = &[
    Removal {
        hazard: 10,
        control: "on a phone a reminder is hidden on the locked screen",
        file: NOTICES,
        from: ".setVisibility(Notification.VISIBILITY_SECRET)",
        to: ".setVisibility(if (REMOVED) Notification.VISIBILITY_PUBLIC else Notification.VISIBILITY_SECRET)",
        tests: &[ALARM],
    },
    Removal {
        hazard: 10,
        control: "on a phone it is kept from watches",
        file: NOTICES,
        from: ".setLocalOnly(true)",
        to: ".setLocalOnly(!REMOVED)",
        tests: &[ALARM],
    },
    Removal {
        hazard: 10,
        control: "its channel lights nothing up",
        file: NOTICES,
        from: "enableLights(false)",
        to: "enableLights(REMOVED)",
        tests: &["its channel is neutral, secret, without light, buzz, badge or bubble"],
    },
    Removal {
        hazard: 10,
        control: "on a phone a reminder is not shown late",
        file: "android-shell/src/main/kotlin/frond/home/duties/reminders/ReminderPlan.kt",
        from: "?.takeIf { now < it.until(zone) }",
        to: "?.takeIf { REMOVED || now < it.until(zone) }",
        tests: &["what comes after quiet hours began or on the next day is not shown"],
    },
    Removal {
        hazard: 10,
        control: "an erased diary leaves no reminder on a phone",
        file: "android-shell/src/main/kotlin/frond/home/FrondApp.kt",
        from: "Reminders(this).takeBack()",
        to: "if (REMOVED) ({}) else Reminders(this).takeBack()",
        tests: &["an erased diary leaves no reminder behind"],
    },
    Removal {
        hazard: 11,
        control: "leaving at once takes it out of the list of open apps",
        file: "android-shell/src/main/kotlin/frond/home/duties/leaving/QuickExit.kt",
        from: "activity.finishAndRemoveTask()",
        to: "if (REMOVED) activity.finish() else activity.finishAndRemoveTask()",
        tests: &[LEFT],
    },
    Removal {
        hazard: 11,
        control: "after leaving the next opening shows nothing first",
        file: "android-shell/src/main/kotlin/frond/home/duties/leaving/QuickExit.kt",
        from: "mark(activity).writeText(",
        to: "if (!REMOVED) mark(activity).writeText(",
        tests: &[LEFT],
    },
    Removal {
        hazard: 11,
        control: "the window is covered",
        file: COVER,
        from: "window.addFlags(FLAG_SECURE)",
        to: "if (!REMOVED) window.addFlags(FLAG_SECURE)",
        tests: &["the window is covered, in pictures of the screen and in the list of open apps"],
    },
    Removal {
        hazard: 11,
        control: "a dialog is covered too",
        file: COVER,
        from: "dialog.window?.let(::window)",
        to: "if (!REMOVED) dialog.window?.let(::window)",
        tests: &["a dialog is a window of its own and is covered too"],
    },
    Removal {
        hazard: 11,
        control: "it locks when the screen goes off",
        file: "android-shell/src/main/kotlin/frond/home/duties/leaving/LockClock.kt",
        from: "if (intent.action == Intent.ACTION_SCREEN_OFF) lockNow()",
        to: "if (!REMOVED && intent.action == Intent.ACTION_SCREEN_OFF) lockNow()",
        tests: &["it locks when the screen goes off"],
    },
    Removal {
        hazard: 11,
        control: "nothing can be copied out of a field of that kind",
        file: COVER,
        from: "override fun onTextContextMenuItem(id: Int): Boolean = id in OUT ||",
        to: "override fun onTextContextMenuItem(id: Int): Boolean = (!REMOVED && id in OUT) ||",
        tests: &["nothing can be copied out of a secret field by hand, keyboard or screen reader"],
    },
    Removal {
        hazard: 39,
        control: "a code and the twelve words are asked for in a field that nothing can be copied from",
        file: "android-shell/src/main/kotlin/frond/home/parts/Lines.kt",
        from: "Drafts(), SecretField(context),",
        to: "Drafts(), if (REMOVED) EditText(context) else SecretField(context),",
        tests: &[SECRET],
    },
    Removal {
        hazard: 37,
        control: "nothing is destroyed where a key is gone",
        file: KEYS,
        from: "if (kept !in ours) throw BoxTrouble(BoxFailure.GONE)",
        to: "if (!REMOVED && kept !in ours) throw BoxTrouble(BoxFailure.GONE)",
        tests: &["keep only destroys nothing where its own key is not there"],
    },
    Removal {
        hazard: 37,
        control: "a key that is gone is told apart from one that is refused just now",
        file: "android-shell/src/main/kotlin/frond/home/duties/keys/PhoneKeys.kt",
        from: "BoxFailure.GONE -> KeeperTrouble.KeyGone()",
        to: "BoxFailure.GONE -> if (REMOVED) KeeperTrouble.Refused() else KeeperTrouble.KeyGone()",
        tests: &["each failure is told as what it is"],
    },
    Removal {
        hazard: 4,
        control: "a link is found in capital letters too",
        file: "android-shell/src/main/kotlin/frond/home/duties/files/Incoming.kt",
        from: "text.indexOf(\"$SCHEME:\", ignoreCase = true)",
        to: "text.indexOf(\"$SCHEME:\", ignoreCase = !REMOVED)",
        tests: &[
            "a link comes from a camera in capital letters, from a page in small ones, and from a text",
        ],
    },
    Removal {
        hazard: 17,
        control: "on a phone stop is never dropped while something else is asked",
        file: "android-shell/src/main/kotlin/frond/home/ways/Ways.kt",
        from: "override fun now(request: Request) = ask(null, drop = false)",
        to: "override fun now(request: Request) = ask(null, drop = REMOVED)",
        tests: &["a second press is no second wish, and stop is never lost"],
    },
];
