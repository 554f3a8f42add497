/**
 * Files of any kind that hold a step sheet to lines of text: {@link cuelead.document.DocumentFile} tells the kind from
 * the content and opens it; {@link cuelead.document.DocumentText} is what it holds. Knows nothing of dances but how
 * counts look. May import {@code report}. The libraries that read PDF, Word and web pages are loaded only for such
 * files, so that plain text opens as fast as without them.
 */
package cuelead.document;
