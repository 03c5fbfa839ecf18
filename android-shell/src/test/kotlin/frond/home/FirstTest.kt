package frond.home

import android.graphics.Bitmap
import android.graphics.Canvas
import android.os.Looper
import org.junit.Assert.assertEquals
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.Robolectric
import org.robolectric.RobolectricTestRunner
import org.robolectric.Shadows.shadowOf
import org.robolectric.annotation.Config
import java.io.File

@RunWith(RobolectricTestRunner::class)
@Config(qualifiers = "w411dp-h891dp-xhdpi")
class FirstTest {
    @Test
    fun `it starts and draws`() {
        val activity = Robolectric.setupActivity(MainActivity::class.java)
        shadowOf(Looper.getMainLooper()).idle()
        val view = activity.window.decorView
        assertEquals(822, view.width)
        val bitmap = Bitmap.createBitmap(view.width, view.height, Bitmap.Config.ARGB_8888)
        view.draw(Canvas(bitmap))
        val folder = File(System.getProperty("frond.pictures")!!)
        folder.mkdirs()
        File(folder, "first.png").outputStream().use { bitmap.compress(Bitmap.CompressFormat.PNG, 100, it) }
    }
}
