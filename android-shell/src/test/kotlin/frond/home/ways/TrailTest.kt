package frond.home.ways

import frond.core.Does
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertTrue
import org.junit.Test

/** Where "back" leads. */
class TrailTest {
    private val trail = Trail()

    @Test
    fun `from a screen back to the one before, and at the first there is none`() {
        trail.arrive(Does.Today, "today")
        assertFalse(trail.hasBack())
        trail.arrive(Does.More, "more")
        trail.arrive(Does.Settings, "settings")
        assertEquals(Does.More, trail.back())
        trail.arrive(Does.More, "more")
        assertEquals(Does.Today, trail.back())
        trail.arrive(Does.Today, "today")
        assertFalse(trail.hasBack())
    }

    @Test
    fun `an answer stands in the place of its form`() {
        trail.arrive(Does.Today, "today")
        trail.arrive(Does.LogSession, "log")
        assertFalse("the form again, with what is wrong", trail.arrive(null, "log"))
        assertTrue(trail.arrive(null, "kept"))
        assertTrue(trail.hasBack())
        assertEquals("not to the form that was sent", Does.Today, trail.back())
    }

    @Test
    fun `an answer upon Today leads back to Today`() {
        trail.arrive(Does.Today, "today")
        trail.arrive(null, "kept")
        assertTrue(trail.hasBack())
        assertEquals(Does.Today, trail.back())
    }

    @Test
    fun `two answers one after the other are one`() {
        trail.arrive(Does.Today, "today")
        trail.arrive(Does.Practice, "running")
        trail.arrive(null, "stopped")
        trail.arrive(null, "kept")
        assertEquals(Does.Today, trail.back())
    }

    @Test
    fun `Today is where every way begins`() {
        trail.arrive(Does.Practice, "running")
        assertTrue(trail.hasBack())
        assertEquals(Does.Today, trail.back())
        trail.arrive(Does.Today, "today")
        trail.arrive(Does.More, "more")
        trail.arrive(Does.Today, "today")
        assertFalse(trail.hasBack())
    }

    @Test
    fun `what was passed already is gone back to`() {
        trail.arrive(Does.Today, "today")
        trail.arrive(Does.More, "more")
        trail.arrive(Does.Settings, "settings")
        trail.arrive(Does.More, "more")
        assertEquals(listOf(Does.Today, Does.More), trail.places())
    }
}
