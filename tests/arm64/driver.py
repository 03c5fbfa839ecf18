"""A diary kept through the border, as a phone keeps one: driver.py life|look|write|ids|panic|opens FOLDER

Runs with any Python whose path holds UniFFI's module for the library; tests/arm64/run runs it on two machines and
compares what it prints. So nothing random may be printed: ids that the core makes are called so, bytes are counted by
nothing. Ids of entries, moments and the keeper's key are fixed here.

Everybody in it is invented; the plan and what happens are those of `frond demo`.
"""

import ctypes
import datetime
import enum
import gc
import hashlib
import hmac
import os
import re
import sys
from pathlib import Path

HERE = Path(__file__).resolve().parent
PLANS = HERE / "../../bindings/desk/src/scenario"


def load():
    """UniFFI's module. Where glibc stands in for bionic, the packed relocations are put right first (loader.c)."""
    if os.environ.get("FROND_LOADER"):
        path = next(str(Path(p) / "libfrond_mobile.so") for p in sys.path if (Path(p) / "libfrond_mobile.so").exists())
        library, loader = ctypes.CDLL(path), ctypes.CDLL(os.environ["FROND_LOADER"])
        loader.put_right.restype = ctypes.c_long
        loader.put_right.argtypes = [ctypes.c_void_p, ctypes.c_char_p]
        done = loader.put_right(library._handle, b"libfrond_mobile.so")
        if done <= 0:
            sys.exit(f"The library could not be loaded as Android does: {done}")
    import frond_mobile

    return frond_mobile


f = load()


class Keeper(f.KeyKeeper):
    """Stands in for a phone's key store: a key of its own that protects nothing, because it stands here."""

    SECRET = b"invented, and no secret at all"

    def __init__(self, marks):
        self.marks = Path(marks)

    def _pad(self, nonce):
        return hashlib.sha256(self.SECRET + nonce).digest()

    def wrap(self, key):
        nonce = os.urandom(16)
        sealed = bytes(a ^ b for a, b in zip(key, self._pad(nonce)))
        return nonce + sealed + hmac.digest(self.SECRET, nonce + sealed, "sha256")

    def unwrap(self, wrap):
        nonce, sealed, mac = wrap[:16], wrap[16:-32], wrap[-32:]
        if not hmac.compare_digest(mac, hmac.digest(self.SECRET, nonce + sealed, "sha256")):
            raise f.KeeperTrouble.KeyGone()
        return bytes(a ^ b for a, b in zip(sealed, self._pad(nonce)))

    def keep_only(self, wrap):
        pass

    def forget(self):
        pass

    def _mark(self, diary):
        return self.marks / f"mark-{diary.hex()}"

    def keep_mark(self, diary, mark):
        self._mark(diary).write_bytes(mark)

    def kept_mark(self, diary):
        return self._mark(diary).read_bytes() if self._mark(diary).exists() else None

    def forget_mark(self, diary):
        self._mark(diary).unlink(missing_ok=True)


# ---- time: London's, summer time from 2026-03-29 01:00 UTC

EPOCH = datetime.datetime(1970, 1, 1)
SUMMER = datetime.datetime(2026, 3, 29, 2, 0)


def millis(local):
    when = datetime.datetime.fromisoformat(local)
    offset = 60 if when >= SUMMER else 0
    return int((when - EPOCH).total_seconds() * 1000) - offset * 60_000, offset


def moment(local, seconds=0):
    wall, offset = millis(local)
    wall += seconds * 1000
    return f.Moment(
        wall_millis=wall, zone="Europe/London", offset_minutes=offset, boot=1,
        elapsed_millis=wall - millis("2026-03-01 00:00")[0],
    )


def instant(local):
    wall, offset = millis(local)
    return f.Instant(millis=wall, offset_seconds=offset * 60, zone="Europe/London")


# ---- what is printed

OWN = re.compile(r"^(a1|b2)[0-9a-f]{30}$")
ID = re.compile(r"\b[0-9a-f]{32}\b")


def text(value):
    return ID.sub(lambda found: found[0] if OWN.match(found[0]) else "(an id that the core made)", value)


def told(value):
    """A value as one line, everything in it."""
    if isinstance(value, enum.Enum):
        return value.name
    if isinstance(value, str):
        return repr(text(value))
    if isinstance(value, (bytes, bytearray)):
        return "(bytes)"
    if value is None or isinstance(value, (bool, int, float)):
        return repr(value)
    if isinstance(value, (list, tuple)):
        return "[" + ", ".join(map(told, value)) + "]"
    if isinstance(value, dict):
        return "{" + ", ".join(sorted(f"{told(k)}: {told(v)}" for k, v in value.items())) + "}"
    if isinstance(value, (datetime.date, datetime.datetime, datetime.timedelta)):
        return str(value)
    parts = {k: v for k, v in vars(value).items()}
    kind = type(value).__qualname__.replace("_", "")
    return f"{kind}(" + ", ".join(f"{k}={told(v)}" for k, v in parts.items()) + ")"


def say(what, value):
    """The records of an answer, a line for each of their fields."""
    if isinstance(value, f.Seen):
        for duty in value.duties:
            print(f"{what}: duty {told(duty)}")
        value = value.view
        while len(vars(value)) == 1 or (hasattr(value, "_values") and len(value._values) == 1):
            inner = value._values[0] if hasattr(value, "_values") else next(iter(vars(value).values()))
            if isinstance(inner, (str, int, list, bool)) or inner is None:
                break
            value = inner
    name = type(value).__qualname__
    for field, part in vars(value).items():
        print(f"{what}: {name}.{field} = {told(part)}")


class Diary:
    def __init__(self, folder):
        self.folder = Path(folder)
        (self.folder / "marks").mkdir(exist_ok=True)
        self.number = 0
        self.named = {}
        self.open()

    def open(self):
        covered = f.Covered(screen=True, pictures=True, keyboard=True, backups=True, reminders=True, leaves=True)
        self.frond = f.Frond(str(self.folder / "diary"), "en", covered, Keeper(self.folder / "marks"))

    def id(self):
        self.number += 1
        return f"a1{self.number:030x}"

    def ask(self, at, request, seconds=0):
        return self.frond.ask(request, moment(at, seconds))

    def say(self, at, what, request, seconds=0):
        say(f"{at} {what}", self.ask(at, request, seconds))

    def write(self, at, told, happened=None, name=None, what="told"):
        own = self.id()
        if name:
            self.named[name] = own
        happened = instant(happened) if happened else None
        seen = self.ask(at, f.Request.WRITE(f.Write(id=own, happened=happened, told=told)))
        say(f"{at} {what}", seen)
        return seen

    def refused(self, at, what, request):
        try:
            self.ask(at, request)
        except f.FrondError as trouble:
            print(f"{at} {what}: {type(trouble).__name__}: {text(str(trouble))}")
        else:
            print(f"{at} {what}: it was not refused")


def rated(number):
    return f.RatingAnswer.RATED(number) if number is not None else None


def trainer(size, minutes, peak, worry=None, ended=None, signs=()):
    return f.Told.SESSION(
        f.SessionTold(
            practice=f.Practice.TRAINER(), parts=[f.UsedPart(widest_diameter_tenths_mm=size, practised_seconds=minutes * 60)],
            position=f.Position.ON_BACK, ended=ended or f.Ended.FINISHED(),
            ratings=f.Ratings(peak=rated(peak), before=None, after=None, worry=rated(worry)), signs=list(signs), note=None,
        )
    )


def breath(practice, minutes):
    return f.Told.SESSION(
        f.SessionTold(
            practice=practice, parts=[f.UsedPart(widest_diameter_tenths_mm=None, practised_seconds=minutes * 60)],
            position=f.Position.OTHER, ended=f.Ended.FINISHED(),
            ratings=f.Ratings(peak=None, before=None, after=None, worry=None), signs=[], note=None,
        )
    )


def plan(number):
    return f.HandedOver.FILE((PLANS / f"programme-{number}.json").read_bytes())


def every_question_no():
    return f.Told.SCREENING(f.Asked.FULL_LIST, f.ScreeningAnswer.NOTHING_NEW, [])


def begin(diary, at):
    if hasattr(diary.frond, "whole"):
        say(f"{at} before", diary.frond.whole(f.WholeRequest.BEGIN(), moment(at)))
        say(f"{at} started", diary.frond.whole(f.WholeRequest.START_NEW(), moment(at)))
    diary.say(at, "home", f.Request.HOME())


def accept(diary, at, number):
    diary.say(at, "read", f.Request.ACCEPT(plan(number)))
    diary.write(at, f.Told.PROGRAMME(plan(number), [f.Although.UNSIGNED]), what="accepted")


def go_on(diary, at):
    """Tries what is suggested."""
    shown = [
        does for does in actions(diary.ask(at, f.Request.SUGGESTION()))
        if type(does).__name__ == type(f.Does.CHOOSE("", f.Chosen.TRY)).__name__ and does.chosen == f.Chosen.TRY
    ]
    diary.write(at, f.Told.CHOOSE(shown[0].shown, f.Chosen.TRY), what="tries")


def actions(value):
    """Every Does of an answer, wherever it stands."""
    if isinstance(value, f.Does):
        yield value
    elif isinstance(value, (list, tuple)):
        for one in value:
            yield from actions(one)
    elif hasattr(value, "__dict__") and not isinstance(value, enum.Enum):
        yield from actions(list(vars(value).values()) + list(getattr(value, "_values", [])))


def weeks(diary):
    ready, size = f.FeelsReady, trainer
    stopped = f.Ended.STOPPED
    print("== a plan, read and accepted")
    begin(diary, "2026-03-02 18:18")
    diary.say("2026-03-02 18:19", "with no plan", f.Request.SUGGESTION())
    accept(diary, "2026-03-02 18:20", 1)
    diary.write("2026-03-02 18:26", every_question_no())
    diary.write("2026-03-02 18:32", f.Told.CONFIRM_STEP())
    diary.write("2026-03-02 18:34", f.Told.LOOK_FORWARD("A swim in the sea in June"))
    diary.write("2026-03-02 18:36", f.Told.FUNCTION("Sitting through a film", 4))
    diary.write("2026-03-02 18:39", f.Told.GOAL("An examination without dread", -2))
    diary.say("2026-03-02 18:40", "the plan", f.Request.PLAN())
    diary.say("2026-03-02 18:41", "the ladder", f.Request.LADDER())
    print("== the first week")
    diary.write("2026-03-02 21:40", breath(f.Practice.BREATHING(), 8))
    diary.write("2026-03-03 20:15", size(120, 5, 3, 6))
    diary.write("2026-03-05 20:30", size(120, 6, 3, 5))
    diary.write("2026-03-06 20:10", breath(f.Practice.BELLY_BREATHING(), 6))
    diary.write("2026-03-07 10:45", size(120, 7, 2, 4))
    diary.write("2026-03-08 11:00", size(120, 8, 2, 3))
    diary.write("2026-03-08 11:12", f.Told.QUESTION("Does it matter which day of the week I practise?"), name="question")
    diary.write("2026-03-08 11:15", f.Told.STRIKE(diary.named["question"]))
    diary.say("2026-03-08 11:16", "hold", f.Request.SUGGESTION())
    print("== not yet, then yes: the first step")
    diary.write("2026-03-09 20:40", f.Told.FEELS_READY(ready.NOT_YET))
    diary.write("2026-03-10 20:20", size(120, 10, 1, 2))
    diary.write("2026-03-12 20:25", size(120, 10, 1, 2))
    diary.write("2026-03-12 20:41", f.Told.FEELS_READY(ready.YES))
    diary.say("2026-03-12 20:42", "suggested", f.Request.SUGGESTION())
    go_on(diary, "2026-03-12 20:42")
    print("== the second size, and a session put right")
    diary.write("2026-03-14 11:10", size(150, 5, 3, 5))
    diary.write("2026-03-15 10:50", size(120, 6, 3, 4), name="size")
    diary.write("2026-03-15 11:04", f.Told.CORRECT(diary.named["size"], size(150, 6, 3, 4)))
    diary.write("2026-03-17 20:30", size(150, 7, 4, 4))
    diary.write("2026-03-19 20:15", size(150, 7, 2, 3))
    diary.write("2026-03-20 21:00", size(150, 8, 2, 2))
    diary.write("2026-03-21 10:30", size(150, 9, 2, 2))
    diary.write("2026-03-21 10:44", f.Told.FEELS_READY(ready.YES))
    diary.say("2026-03-21 10:45", "looked at", f.Request.SUGGESTION())
    go_on(diary, "2026-03-21 10:45")
    print("== the third is too much: a step back")
    diary.write("2026-03-23 20:40", size(180, 5, 5, 6))
    diary.write("2026-03-25 20:35", size(180, 2, 7, 8, stopped(f.StopReason.DISCOMFORT)))
    diary.write("2026-03-27 20:30", size(180, 5, 6, 7))
    diary.say("2026-03-27 20:44", "suggested", f.Request.SUGGESTION())
    go_on(diary, "2026-03-27 20:44")
    diary.write("2026-03-29 10:20", size(150, 6, 3, 5))
    diary.write("2026-04-02 20:22", f.Told.TIME_OFF("2026-04-03", "2026-04-06"))
    print("== a sign: stop and call")
    diary.write("2026-04-14 20:00", every_question_no())
    diary.write("2026-04-14 20:30", size(150, 5, 3, 5))
    diary.write("2026-04-18 10:40", size(150, 3, 4, 6, stopped(f.StopReason.DISCOMFORT), [f.Sign.PAIN_THAT_STAYS]))
    diary.say("2026-04-18 10:41", "today", f.Request.TODAY())
    diary.say("2026-04-18 10:42", "stop and call", f.Request.STOP_AND_CALL())
    diary.say("2026-04-18 10:43", "dialled", f.Request.DIAL("999"))
    diary.say("2026-04-18 10:44", "nothing with trainers", f.Request.BEGIN(f.Begin.STEP()))
    print("== spoken with the clinic, and a revised plan")
    diary.say("2026-04-20 18:00", "to be closed", f.Request.SPOKE())
    spoke(diary, "2026-04-20 18:00", "2026-04-20 16:40")
    accept(diary, "2026-04-21 19:30", 2)
    diary.write("2026-04-21 19:36", every_question_no())
    diary.write("2026-04-21 19:41", f.Told.CONFIRM_STEP())
    diary.write("2026-04-22 20:15", size(150, 5, 2, 4))
    diary.write("2026-04-24 20:20", size(150, 6, 2, 3))
    diary.say("2026-04-24 20:31", "suggested", f.Request.SUGGESTION())


def spoke(diary, at, happened):
    """Everything open is named, and the word to go on."""
    keys = []
    for key in found(diary.ask(at, f.Request.SPOKE()), f.SignKey):
        if all(told(key) != told(other) for other in keys):
            keys.append(key)
    diary.write(at, f.Told.SPOKE("Ida Marlowe (invented)", keys, True), happened=happened, what="spoke")


def found(value, kind):
    """Every value of a kind in an answer."""
    if isinstance(value, kind):
        yield value
    elif isinstance(value, (list, tuple)):
        for one in value:
            yield from found(one, kind)
    elif hasattr(value, "__dict__") and not isinstance(value, enum.Enum):
        yield from found(list(vars(value).values()) + list(getattr(value, "_values", [])), kind)


def practice(diary):
    at = "2026-04-25 20:00"
    print("== breathing with the clock, killed and found again")
    diary.say(at, "patterns", f.Request.BREATHING())
    diary.say(at, "begun", f.Request.BEGIN(f.Begin.BREATHING(f.PresetId.EVEN(), 5)))
    diary.say(at, "runs", f.Request.DURING(f.PracticeEvent.BEGIN(0)))
    for seconds in range(15, 121, 15):
        diary.ask(at, f.Request.DURING(f.PracticeEvent.SEEN()), seconds)
    diary.say(at, "two minutes in", f.Request.PRACTICE(), 120)
    # As after the end of the process: a new object, and nothing was said before.
    diary.open()
    diary.say(at, "found", f.Request.HOME(), 200)
    diary.say(at, "goes on", f.Request.FOUND(f.FoundChoice.GO_ON), 210)
    diary.say(at, "stopped", f.Request.DURING(f.PracticeEvent.STOP()), 300)
    diary.say(at, "how it was", f.Request.RATE(), 310)


def refusals(diary):
    at = "2026-04-26 12:00"
    print("== what does not hold is said, and nothing is written")
    diary.refused(at, "a rating of 12", f.Request.WRITE(f.Write(id=diary.id(), happened=None, told=trainer(150, 5, 12))))
    diary.refused(at, "an empty question", f.Request.WRITE(f.Write(id=diary.id(), happened=None, told=f.Told.QUESTION("  "))))
    diary.say(at, "a plan that is none", f.Request.ACCEPT(f.HandedOver.FILE(b"{}")))
    late = f.Write(id=diary.id(), happened=instant("2026-04-27 12:00"), told=trainer(150, 5, 1))
    diary.refused(at, "a session tomorrow", f.Request.WRITE(late))


def the_end(folder):
    """What an opened diary says on its last day: the same for whoever opens it."""
    diary = Diary(folder)
    at = "2026-04-26 12:30"
    for what, request in (
        ("home", f.Request.TODAY()), ("entries", f.Request.ENTRIES()), ("calendar", f.Request.CALENDAR(None)),
        ("keeping", f.Request.KEEPING()), ("plan", f.Request.PLAN()), ("reminders", f.Request.REMINDERS()),
    ):
        diary.say(at, what, request)


def life(folder):
    diary = Diary(folder)
    weeks(diary)
    practice(diary)
    refusals(diary)
    del diary
    print("== backups")
    names = sorted(path.name for path in (Path(folder) / "diary").rglob("*") if path.is_file())
    print("\n".join(names))
    print("== the end, opened anew")
    the_end(folder)


# ---- what a machine shows by dying

AT = "2026-03-02 18:20"


def started(folder):
    diary = Diary(folder)
    if hasattr(diary.frond, "whole"):
        diary.frond.whole(f.WholeRequest.BEGIN(), moment(AT))
        if not (Path(folder) / "diary").exists():
            diary.frond.whole(f.WholeRequest.START_NEW(), moment(AT))
    return diary


def write(folder):
    """Writes without end, and says each id once it is acknowledged."""
    diary = started(folder)
    for number in range(1, 100_000):
        own = f"b2{number:030x}"
        question = f.Told.QUESTION(f"Question {number}: may I ask it?")
        diary.ask(AT, f.Request.WRITE(f.Write(id=own, happened=None, told=question)), number)
        print(own, flush=True)


def ids(folder):
    """The ids of what `write` wrote that are there."""
    diary = started(folder)
    seen = diary.ask(AT, f.Request.QUESTIONS(), 200_000)
    everything = told(vars(seen.view)) + told(list(getattr(seen.view, "_values", [])))
    print("\n".join(sorted(set(re.findall(r"\bb2[0-9a-f]{30}\b", everything)))))


def panic(folder):
    """A buffer that no honest shell sends: no address, but a size. Taking it apart is a fault inside the library, a
    panic in Rust; it must come back through the border as UniFFI's status 2, and do no harm."""
    diary = started(folder)
    before = told(diary.ask(AT, f.Request.TODAY()).view)
    library = ctypes.CDLL(str(Path(f.__file__).with_name("libfrond_mobile.so")))

    class Buffer(ctypes.Structure):
        _fields_ = [("capacity", ctypes.c_uint64), ("len", ctypes.c_uint64), ("data", ctypes.c_void_p)]

    class Status(ctypes.Structure):
        _fields_ = [("code", ctypes.c_int8), ("error", Buffer)]

    # Freeing is an export that every UniFFI library has.
    free = library.ffi_frond_mobile_rustbuffer_free
    free.argtypes, free.restype = [Buffer, ctypes.POINTER(Status)], None
    for _ in range(50):
        status = Status()
        free(Buffer(capacity=10, len=3, data=None), ctypes.byref(status))
        if status.code != 2:
            sys.exit(f"a panic came back as {status.code}")
    words = ctypes.string_at(status.error.data, status.error.len).decode(errors="replace") if status.error.data else ""
    print(f"status 2: {words}")
    if told(diary.ask(AT, f.Request.TODAY()).view) != before:
        sys.exit("it answers something else than before")
    print("it still answers")


class Mallinfo(ctypes.Structure):
    """What glibc says of its memory: mallinfo2(3)."""

    _fields_ = [(name, ctypes.c_size_t) for name in
                ("arena", "ordblks", "smblks", "hblks", "hblkhd", "usmblks", "fsmblks", "uordblks", "fordblks", "keepcost")]


def in_use():
    """Bytes that were allocated and not freed. What qemu itself takes, and grows by, is not in it."""
    mallinfo = ctypes.CDLL("libc.so.6").mallinfo2
    mallinfo.restype = Mallinfo
    gc.collect()
    said = mallinfo()
    return said.uordblks + said.hblkhd


def opens(folder, times):
    times = int(times)
    diary = started(folder)
    first = told(diary.ask(AT, f.Request.TODAY()).view)
    grown, before = [], in_use()
    for number in range(1, times + 1):
        diary.open()
        if told(diary.ask(AT, f.Request.TODAY()).view) != first:
            sys.exit(f"opening {number} says something else")
        if number % (times // 10) == 0:
            grown.append(in_use() - before)
            before += grown[-1]
    # A leak shows in every tenth; what a table of Python's takes when it is made larger shows in one.
    usual = sorted(grown)[len(grown) // 2]
    print(f"{times} opens; in use after each tenth, in bytes more: {' '.join(map(str, grown))}; usually {usual}")
    if usual > times // 10 * 50:
        sys.exit("it grows with every opening")


if __name__ == "__main__":
    {"life": life, "look": the_end, "write": write, "ids": ids, "panic": panic, "opens": opens}[sys.argv[1]](*sys.argv[2:])
