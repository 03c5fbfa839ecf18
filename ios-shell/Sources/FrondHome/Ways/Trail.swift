// The addresses gone through, the present one last. An answer that has no address of its own (something was kept, a form is
// shown again) stands in the place of what it answers: back from it leads to what was before that.

struct Trail {
    private struct Step {
        let does: Does
        var kind: String?
    }

    private var steps: [Step] = []

    /// What is shown has no address of its own.
    private var between = false

    var places: [Does] { steps.map(\.does) }

    /// The address of what is shown, where it has one.
    var here: Does? { between ? nil : steps.last?.does }

    var hasBack: Bool { steps.count > 1 || (between && !steps.isEmpty) }

    /// Where back leads.
    mutating func back() -> Does? {
        if !between, !steps.isEmpty { steps.removeLast() }
        return steps.last?.does
    }

    mutating func replace(_ all: [Does]) {
        steps = all.map { Step(does: $0, kind: nil) }
        between = false
    }

    /// A screen of this `kind` is shown, at this address or at none. Answers whether it is another place than before.
    mutating func arrive(at: Does?, kind: String) -> Bool {
        guard let at else {
            let last = steps.last
            if !between, let last, last.kind == kind { return false }
            if !between, let last, last.kind != nil, steps.count > 1 { steps.removeLast() }
            between = true
            return true
        }
        let before = here
        // Today is where every way begins; and what was passed already is gone back to.
        if at == .today {
            steps = []
        } else if steps.isEmpty {
            steps = [Step(does: .today, kind: nil)]
        }
        if let known = steps.firstIndex(where: { $0.does == at }) { steps.removeSubrange(known...) }
        steps.append(Step(does: at, kind: kind))
        between = false
        return before != at
    }
}
