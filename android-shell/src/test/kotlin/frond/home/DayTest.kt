package frond.home

import android.content.Intent
import android.net.Uri
import android.os.Bundle
import frond.core.AnythingNew
import frond.core.Answer
import frond.core.Begin
import frond.core.Chosen
import frond.core.Does
import frond.core.FeelsReady
import frond.core.FoundChoice
import frond.core.LineKind
import frond.core.PracticeEvent
import frond.core.PresetId
import frond.core.Request
import frond.core.Screen
import frond.core.Sign
import frond.core.SignGroup
import frond.home.looked.FrondRunner
import frond.home.looked.Opened
import frond.home.looked.Person
import frond.home.looked.Plans
import frond.home.looked.Shown
import frond.home.looked.screen
import frond.home.parts.Rated
import frond.home.screens.SEND
import org.junit.After
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertTrue
import org.junit.Before
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.Shadows.shadowOf
import java.time.Duration
import java.time.LocalDate
import java.time.ZoneOffset
import java.util.TimeZone

/**
 * The whole day of one person, from a diary that does not exist yet to one that is gone, by pressing what is on the screen;
 * the core behind it is the real one. The person and her plans are invented.
 */
@RunWith(FrondRunner::class)
class DayTest {
    private val zoneBefore = TimeZone.getDefault()

    /** Where the phone is; reminders follow it. */
    @Before
    fun zone() = TimeZone.setDefault(TimeZone.getTimeZone("Europe/Madrid"))

    @After
    fun zoneAgain() = TimeZone.setDefault(zoneBefore)

    @Test
    fun `the whole day in English`() = day(Shown.LIGHT)

    @Test
    fun `the whole day in Spanish`() = day(Shown.SPANISH)

    @Test
    fun `the whole day mirrored`() = day(Shown.MIRRORED)

    private fun day(shown: Shown) = with(Day(shown)) {
        breatheFirst()
        link()
        plan()
        cautions()
        session()
        rated()
        suggested()
        stopAndCall()
        spoken()
        remembers()
        locks()
        handsOver()
        val (copy, twelve) = keepsElsewhere()
        goesBack()
        leavesNothingToRead(twelve)
        erases()
        restores(copy, twelve)
    }
}

/** One day. Decides the order of what is done and what must be true after each step. */
internal class Day(shown: Shown) {
    var opened = Opened(shown)

    /** The day it is. */
    val today: LocalDate = LocalDate.of(2026, 3, 2)
    val she get() = Person(opened)

    /** First run: breathing comes before everything else. */
    fun breatheFirst() {
        opened.app.wall = today.atTime(9, 0).toInstant(ZoneOffset.UTC)
        she.press(Does.StartNew)
        assertTrue("the first page breathes", opened.screen is Screen.FirstRun)
        she.press(Does.Breathing)
        she.press(Does.Begin(Begin.Breathing(PresetId.Even, 3)))
        she.press(PracticeEvent.Begin(0))
        opened.pass(Duration.ofSeconds(30))
        assertEquals(30, she.clock())
        she.press(PracticeEvent.Stop)
        assertTrue("that stopping is right comes first", opened.screen is Screen.Stopped)
        she.press(Does.Rate)
        rateAll(Rated.RatherNot)
        she.press(SEND)
        assertTrue(opened.screen is Screen.Kept)
    }

    /** Somebody else's plan comes as a link: it is read, and it is not hers. */
    fun link() {
        val link = Plans.fixture("handover-v1/open.link").readText().trim()
        opened.controller.newIntent(Intent(Intent.ACTION_VIEW, Uri.parse(link)))
        opened.settle()
        val plan = (opened.screen as Screen.Accept).v1
        assertTrue("the whole plan in cards", plan.cards.size >= 4)
        she.press(Does.NotMine)
        she.home()
        assertEquals("nothing was accepted", null, (opened.screen as Screen.Today).v1.step)
    }

    /** Her own comes as a file; nobody signed it, and that has to be said knowingly. */
    fun plan() {
        she.to(Does.AcceptProgramme)
        she.choosesFile("file", Plans.quick())
        she.press(SEND)
        she.press("yes")
        assertTrue("not without knowing", opened.screen is Screen.Accept)
        she.chooseAt("knowing", 0)
        she.press("yes")
        assertTrue(opened.screen is Screen.Kept)
        she.press(Does.StepCheck)
        she.press(Does.ConfirmStep)
        assertTrue(opened.screen is Screen.Kept)
    }

    /** The whole list of cautions, none of it answered beforeshe. */
    fun cautions() {
        she.press(Does.Screening)
        assertFalse(she.anythingChosen())
        for (group in SignGroup.entries) she.choose("group-${group.name}", Answer.NO)
        she.press(SEND)
        assertTrue(opened.screen is Screen.Kept)
    }

    /** A timed session. The process ends in the middle of it; it is found again and gone on with. */
    fun session() {
        she.home()
        she.press(Does.Begin(Begin.Step))
        if (she.sees(AnythingNew.NOTHING_NEW)) she.press(AnythingNew.NOTHING_NEW)
        she.press(PracticeEvent.Begin(0))
        opened.pass(Duration.ofSeconds(62))
        // The phone turned round: the clock goes on.
        opened.controller.recreate()
        opened.settle()
        opened.pass(Duration.ofSeconds(10))
        assertEquals(72, she.clock())
        killed(Duration.ofMinutes(20))
        val found = (opened.screen as Screen.Found).v1
        assertEquals(setOf(FoundChoice.GO_ON, FoundChoice.FINISH, FoundChoice.DISCARD), found.choices.map { it.choice }.toSet())
        she.press(FoundChoice.GO_ON)
        if (she.sees(PracticeEvent.GoOn)) she.press(PracticeEvent.GoOn)
        val certain = she.clock()
        // Noted every few seconds: what is lost is less than that, and of the twenty minutes nothing is added.
        assertTrue("$certain s of 72 are certain", certain in 57..72)
        opened.pass(Duration.ofMinutes(5))
        she.press(PracticeEvent.Enough(0))
    }

    /** How it was. Nothing is chosen beforehand; refused, it loses nothing; pressed twice, it is written once. */
    fun rated() {
        if (she.sees(Does.Rate)) she.press(Does.Rate)
        assertFalse(she.anythingChosen())
        she.choose("rating-PEAK", Rated.Number(2))
        she.press(SEND)
        assertTrue("two questions have no answer yet", opened.screen is Screen.Rate)
        assertEquals(listOf<Any?>(Rated.Number(2)), she.chosen("rating-PEAK"))
        rateAll(Rated.Number(2))
        she.press(SEND)
        assertTrue(opened.screen is Screen.Kept)
    }

    /** What her clinician's rule says, why, and staying. */
    fun suggested() {
        she.press(Does.Suggestion)
        she.press(Does.FeelsReady)
        she.press(FeelsReady.YES)
        she.to(Does.Suggestion)
        val suggestion = (opened.screen as Screen.Suggestion).v1
        assertTrue("whose rule it is", suggestion.whose.orEmpty().contains("Ada Invented"))
        val offers = suggestion.actions.map { it.does }.filterIsInstance<Does.Choose>()
        assertEquals(setOf(Chosen.TRY, Chosen.STAY), offers.map { it.chosen }.toSet())
        val sizes = offers.map { offer -> she.size(offer) }
        assertEquals("trying and staying are offered alike", sizes[0], sizes[1])
        she.unfold("why")
        she.press(offers.single { it.chosen == Chosen.STAY })
        assertTrue(opened.screen is Screen.Kept)
    }

    /** A sign: stop and call, in the order of the rule; the number is one press away, and nothing rings by itself. */
    fun stopAndCall() {
        report(Sign.MORE_THAN_A_LITTLE_BLEEDING)
        val call = (opened.screen as Screen.StopAndCall).v1
        assertEquals(LineKind.STOP_NOW, call.call.lines.first().kind)
        dialled("01632960123")
        she.home()
        assertFalse("no practice with trainers meanwhile", she.sees(Does.Begin(Begin.Step)))
        report(Sign.NUMB_SADDLE)
        val emergency = (opened.screen as Screen.StopAndCall).v1
        assertEquals(LineKind.EMERGENCY_NUMBER_FIRST, emergency.call.lines.first().kind)
        dialled("999")
    }

    /** The talk that closes what is open. */
    fun spoken() {
        she.to(Does.Spoke)
        assertFalse(she.anythingChosen())
        she.type("with", "Ada Invented")
        val open = (opened.screen as Screen.Spoke).v1.signs
        assertEquals(2, open.size)
        for (one in open) she.choose("open", one.key)
        if ("pause" in she.fields()) she.choose("pause", true)
        she.press(SEND)
        she.home()
        assertFalse("nothing asks to call any more", she.sees(Does.StopAndCall))
    }

    private fun report(sign: Sign) {
        // In reach from every screen: it stands in the frame.
        she.press("not-right")
        assertFalse(she.anythingChosen())
        she.choose(she.fields().first { name -> name.startsWith("signs-") && sign in she.values(name) }, sign)
        she.press(SEND)
    }

    private fun dialled(number: String) {
        she.press(Request.Dial(number))
        val intent = checkNotNull(shadowOf(opened.app).nextStartedActivity) { "nothing was opened" }
        assertEquals(Intent.ACTION_DIAL, intent.action)
        assertEquals(number.filter(Char::isDigit), intent.data?.schemeSpecificPart.orEmpty().filter(Char::isDigit))
    }

    private fun rateAll(answer: Rated) {
        for (name in she.fields().filter { it.startsWith("rating-") }) she.choose(name, answer)
    }

    /** The phone ends the process behind her back; she opens the app again after a while. */
    fun killed(away: Duration) {
        val state = Bundle()
        opened.controller.saveInstanceState(state).pause().stop().destroy()
        opened.app.newProcess()
        shadowOf(android.os.Looper.getMainLooper()).idleFor(away)
        opened = Opened(opened.shown, state)
    }
}
