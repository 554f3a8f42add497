/**
 * A lesson: which pieces of a dance are walked through in which order, how fast and over what, and the text file that
 * keeps it: {@link cuelead.lesson.Lesson}, {@link cuelead.lesson.UsualLesson}, {@link cuelead.lesson.LessonFile}. May
 * import {@code plan}, {@code dance}, {@code time}, {@code report} and {@code english}.
 */
package cuelead.lesson;
