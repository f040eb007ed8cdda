export { type CasewrightAddedServices, CasewrightModule, type CasewrightServices, createCasewrightServices } from './casewright-module.js';
