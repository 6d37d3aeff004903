/**
 * Engine models where people keep them: on a shelf of folders, as files, as jars of code that run only by consent.
 */
package everyblade.session.model;
