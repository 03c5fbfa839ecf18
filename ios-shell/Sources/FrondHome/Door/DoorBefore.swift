// A door that stands before another one and hands everything on, but for what it does itself.

protocol DoorBefore: Door {
    var door: any Door { get }
}

extension DoorBefore {
    func press(_ does: Does) async -> Replied { await door.press(does) }

    func ask(_ request: Request) async -> Replied { await door.ask(request) }

    func whole(_ request: WholeRequest) async -> Replied { await door.whole(request) }

    func tell(_ told: Told, id: EntryId, happened: Instant?) async -> Replied {
        await door.tell(told, id: id, happened: happened)
    }

    func newId() async -> EntryId? { await door.newId() }

    func say(_ day: Day) async -> String { await door.say(day) }

    func say(_ time: HourMinute) async -> String { await door.say(time) }

    func tidy() async { await door.tidy() }
}
