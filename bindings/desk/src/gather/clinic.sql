-- The clinic's questions to what `frond gather` wrote. DuckDB and Apache Spark run this file unchanged; it
-- reads the views diaries, sessions, steps, weeks and signs, one for each file of lines, and leaves one view
-- for each question. What the columns are stands in columns.json.
--
-- Everything is self-reported, counted within one step of one revision of one programme, and has no control.
-- A long time on a step, a stop or a step back is no failure of anybody.

-- What was practised on each step beside what was planned for those days. A part of a planned time is left
-- out of the least and counted as one in the most, for each time on the step by itself.
CREATE OR REPLACE TEMP VIEW practised AS
WITH done AS (
  SELECT diary, stretch, COUNT(*) AS sessions, COUNT(DISTINCT counts_on) AS days
  FROM sessions
  WHERE of_step AND stretch IS NOT NULL
  GROUP BY diary, stretch
)
SELECT
  steps.programme,
  steps.revision,
  steps.step,
  COUNT(DISTINCT steps.diary) AS diaries,
  COUNT(*) AS times,
  SUM(steps.days) AS days,
  SUM(steps.days_off) AS days_off,
  SUM(CAST(FLOOR(steps.weekly_least * (steps.days - steps.days_off) / 7.0) AS BIGINT)) AS planned_least,
  SUM(CAST(CEIL(steps.weekly_most * (steps.days - steps.days_off) / 7.0) AS BIGINT)) AS planned_most,
  SUM(COALESCE(done.sessions, 0)) AS sessions,
  SUM(COALESCE(done.days, 0)) AS days_practised
FROM steps
LEFT JOIN done ON done.diary = steps.diary AND done.stretch = steps.stretch
GROUP BY steps.programme, steps.revision, steps.step;

-- The same week by week of a time on a step: are later weeks practised less than the first? Fewer and fewer
-- diaries are still on the step in later weeks, so the weeks do not compare the same people.
CREATE OR REPLACE TEMP VIEW practised_by_week AS
WITH done AS (
  SELECT diary, stretch, week, COUNT(*) AS sessions, COUNT(DISTINCT counts_on) AS days
  FROM sessions
  WHERE of_step AND stretch IS NOT NULL
  GROUP BY diary, stretch, week
)
SELECT
  weeks.programme,
  weeks.revision,
  weeks.step,
  weeks.week,
  COUNT(*) AS person_weeks,
  SUM(weeks.days - weeks.days_off) AS days,
  CAST(SUM(weeks.weekly_least * (weeks.days - weeks.days_off)) AS DOUBLE) / 7 AS planned_least,
  CAST(SUM(weeks.weekly_most * (weeks.days - weeks.days_off)) AS DOUBLE) / 7 AS planned_most,
  SUM(COALESCE(done.sessions, 0)) AS sessions,
  SUM(COALESCE(done.days, 0)) AS days_practised
FROM weeks
LEFT JOIN done ON done.diary = weeks.diary AND done.stretch = weeks.stretch AND done.week = weeks.week
GROUP BY weeks.programme, weeks.revision, weeks.step, weeks.week;

-- The highest discomfort of sessions on the step: quartiles by linear interpolation, and how many were not
-- rated. Unrated sessions are not comfortable ones; they are unknown.
CREATE OR REPLACE TEMP VIEW discomfort AS
SELECT
  programme,
  revision,
  step,
  COUNT(*) AS sessions,
  COUNT(peak) AS rated,
  CAST(COUNT(*) - COUNT(peak) AS DOUBLE) / COUNT(*) AS unrated_share,
  MIN(peak) AS least,
  PERCENTILE_CONT(0.25) WITHIN GROUP (ORDER BY peak) AS lower_quartile,
  PERCENTILE_CONT(0.5) WITHIN GROUP (ORDER BY peak) AS median_peak,
  PERCENTILE_CONT(0.75) WITHIN GROUP (ORDER BY peak) AS upper_quartile,
  MAX(peak) AS most
FROM sessions
WHERE on_step AND stretch IS NOT NULL
GROUP BY programme, revision, step;

-- Sessions that were stopped or could not start, and why. Stopping is always right.
CREATE OR REPLACE TEMP VIEW stops AS
SELECT
  programme,
  revision,
  step,
  COUNT(*) AS sessions,
  SUM(CASE WHEN ended = 'stopped' THEN 1 ELSE 0 END) AS stopped,
  SUM(CASE WHEN ended = 'could_not_start' THEN 1 ELSE 0 END) AS could_not_start,
  SUM(CASE WHEN reason = 'discomfort' THEN 1 ELSE 0 END) AS for_discomfort,
  SUM(CASE WHEN reason = 'did_not_go_in' THEN 1 ELSE 0 END) AS for_not_going_in,
  SUM(CASE WHEN reason = 'upset' THEN 1 ELSE 0 END) AS for_being_upset,
  SUM(CASE WHEN reason = 'interrupted' THEN 1 ELSE 0 END) AS for_an_interruption,
  SUM(CASE WHEN reason = 'other' THEN 1 ELSE 0 END) AS for_another_reason
FROM sessions
WHERE of_step AND stretch IS NOT NULL
GROUP BY programme, revision, step;

-- What each step was left for, and how many are still on it.
CREATE OR REPLACE TEMP VIEW moves AS
SELECT
  programme,
  revision,
  step,
  SUM(CASE WHEN left_for = 'up' THEN 1 ELSE 0 END) AS up,
  SUM(CASE WHEN left_for = 'back' THEN 1 ELSE 0 END) AS back,
  SUM(CASE WHEN left_for IN ('revision', 'programme') THEN 1 ELSE 0 END) AS for_another_plan,
  SUM(CASE WHEN left_for IS NULL THEN 1 ELSE 0 END) AS still_on_it
FROM steps
GROUP BY programme, revision, step;

-- How long a step was used before it was left for a higher one. Those who are still on it, or left it for
-- something else, are not in these numbers: the time to going up is longer than they say. The desk shows it
-- with them in.
CREATE OR REPLACE TEMP VIEW days_before_going_up AS
SELECT
  programme,
  revision,
  step,
  COUNT(*) AS times,
  MIN(days) AS least,
  PERCENTILE_CONT(0.25) WITHIN GROUP (ORDER BY days) AS lower_quartile,
  PERCENTILE_CONT(0.5) WITHIN GROUP (ORDER BY days) AS median_days,
  PERCENTILE_CONT(0.75) WITHIN GROUP (ORDER BY days) AS upper_quartile,
  MAX(days) AS most
FROM steps
WHERE left_for = 'up' AND began_shown
GROUP BY programme, revision, step;

-- Signs by how grave they were taken, and in how many diaries.
CREATE OR REPLACE TEMP VIEW signs_by_tier AS
SELECT
  tier,
  COUNT(*) AS noted,
  COUNT(DISTINCT diary) AS diaries,
  SUM(CASE WHEN with_session THEN 1 ELSE 0 END) AS with_a_session,
  SUM(CASE WHEN open THEN 1 ELSE 0 END) AS still_open
FROM signs
GROUP BY tier;

-- How far all this can be relied on.
CREATE OR REPLACE TEMP VIEW kept AS
SELECT
  COUNT(*) AS diaries,
  SUM(CASE WHEN narrowed THEN 1 ELSE 0 END) AS narrowed,
  SUM(CASE WHEN missing_entries > 0 THEN 1 ELSE 0 END) AS with_entries_missing,
  SUM(CASE WHEN restored > 0 THEN 1 ELSE 0 END) AS restored,
  SUM(CASE WHEN paused THEN 1 ELSE 0 END) AS paused,
  SUM(CASE WHEN open_signs > 0 THEN 1 ELSE 0 END) AS with_open_signs
FROM diaries;
