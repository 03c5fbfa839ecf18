// The same door, which takes back what lies outside of the diary before everything is erased: if the phone ends the app in the
// middle of it, no reminder comes any more. Where it was not erased after all, what was taken back is there again.

struct ErasesLast: DoorBefore {
    let door: any Door

    /// Takes it back, and answers how to put it there again.
    let takeBack: @Sendable () async -> @Sendable () async -> Void

    func press(_ does: Does) async -> Replied {
        does == .eraseAllNow ? await erasing { await door.press(does) } : await door.press(does)
    }

    func whole(_ request: WholeRequest) async -> Replied {
        request == .eraseAll ? await erasing { await door.whole(request) } : await door.whole(request)
    }

    private func erasing(_ send: () async -> Replied) async -> Replied {
        let putBack = await takeBack()
        let reply = await send()
        // Still open: nothing was erased.
        if reply.beside?.standing.open == true { await putBack() }
        return reply
    }
}

extension Replied {
    /// What came with it.
    var beside: Beside? {
        switch self {
        case .seen(_, _, let beside), .trouble(_, _, let beside): beside
        case .mute: nil
        }
    }
}
