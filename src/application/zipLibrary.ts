/** The one door to the ZIP library. */
export { Zip, ZipDeflate, zip } from 'fflate';
