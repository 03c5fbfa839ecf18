import Testing

@testable import FrondHome

/// When everything is covered.
struct CoverTests {
    private func state(_ change: (inout CoverState) -> Void) -> CoverState {
        var state = CoverState()
        state.words(true)
        state.front()
        change(&state)
        return state
    }

    @Test func coveredBeforeItWasEverInFront() {
        #expect(CoverState().over == .blank)
    }

    @Test func uncoveredOnlyWhileInFront() {
        #expect(state { _ in }.over == .nothing)
        #expect(state { $0.behind() }.over == .blank)
        #expect(state { $0.behind(); $0.front() }.over == .nothing)
    }

    @Test func aRecordingIsCoveredUntilSheSaysOtherwise() {
        #expect(state { $0.capture(true) }.over == .closed)
        #expect(state { $0.capture(true); $0.allow() }.over == .nothing)
        // What she allowed is for this one: the next is asked about anew.
        #expect(state { $0.capture(true); $0.allow(); $0.capture(false); $0.capture(true) }.over == .closed)
        // Allowing beforehand is nothing.
        #expect(state { $0.capture(true); $0.capture(false) }.over == .nothing)
    }

    @Test func whatSheAllowedIsNotAPictureInTheListOfOpenApps() {
        #expect(state { $0.capture(true); $0.allow(); $0.behind() }.over == .blank)
        #expect(state { $0.capture(true); $0.allow(); $0.behind(); $0.front() }.over == .nothing)
    }

    @Test func withoutAWordThereIsNothingToPress() {
        #expect(state { $0.words(false); $0.capture(true) }.over == .blank)
        #expect(state { $0.words(false); $0.capture(true); $0.words(true) }.over == .closed)
    }

    /// Whatever comes in whatever order: a picture of what was not allowed is never to be had.
    @Test func neverUncoveredWhileBehindOrRecordedUnasked() {
        let changes: [(inout CoverState) -> Void] = [
            { $0.front() }, { $0.behind() }, { $0.capture(true) }, { $0.capture(false) }, { $0.allow() }, { $0.words(true) },
        ]
        // Every way of six steps.
        for number in 0..<46_656 {
            var (left, state) = (number, CoverState())
            var (inFront, captured, allowed) = (false, false, false)
            for _ in 0..<6 {
                let step = left % 6
                left /= 6
                changes[step](&state)
                switch step {
                case 0: inFront = true
                case 1: inFront = false
                case 2: captured = true
                case 3: (captured, allowed) = (false, false)
                case 4: allowed = true
                default: break
                }
                if !inFront || (captured && !allowed) {
                    #expect(state.over != .nothing)
                } else {
                    #expect(state.over == .nothing)
                }
            }
        }
    }
}
