export { type MappedColumn, type SenderMapping, senderMapping, senderMappingJsonSchema } from './schema.ts';
