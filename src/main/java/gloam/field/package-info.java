/**
 * The weather in the field: cloud, dew and cold.
 * Knows nothing of the sky behind the clouds, of cameras and of files.
 */
package gloam.field;
